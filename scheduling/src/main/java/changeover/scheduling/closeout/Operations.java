package changeover.scheduling.closeout;

import changeover.scheduling.closeout.OperationAnswer.State;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** What devices said, in the order in which this side took it. */
@ApplicationScoped
public class Operations {

    @Inject
    EntityManager rows;

    Optional<ReceivedOperation> find(UUID id) {
        return Optional.ofNullable(rows.find(ReceivedOperation.class, id));
    }

    /** Everything said about a visit, refused and waiting included, as it came. */
    public List<ReceivedOperation> of(UUID visitId) {
        return rows.createQuery(
                        "from ReceivedOperation where visitId = :visit order by place nulls last, receivedAt, id",
                        ReceivedOperation.class)
                .setParameter("visit", visitId)
                .getResultList();
    }

    /** The answers that operations of a visit have got, for a device that lost them. */
    public List<OperationAnswer> answers(UUID visitId, Collection<UUID> ids) {
        return of(visitId).stream()
                .filter(operation -> ids.contains(operation.id()))
                .map(Operations::answer)
                .toList();
    }

    void keep(ReceivedOperation operation) {
        rows.persist(operation);
    }

    List<ReceivedOperation> all(Collection<UUID> ids) {
        return ids.isEmpty()
                ? List.of()
                : rows.createQuery("from ReceivedOperation where id in :ids", ReceivedOperation.class)
                        .setParameter("ids", ids)
                        .getResultList();
    }

    static OperationAnswer answer(ReceivedOperation operation) {
        State state = State.valueOf(operation.state().toUpperCase(Locale.ROOT));
        return new OperationAnswer(operation.id(), state, AnswerJson.read(operation.answer()));
    }

    /** The sheet that the taken operations give. */
    static Sheet sheet(List<ReceivedOperation> said) {
        Sheet sheet = Sheet.BLANK;
        for (ReceivedOperation operation : said) {
            if (operation.place().isPresent()) {
                sheet = sheet.with(taken(operation));
            }
        }
        return sheet;
    }

    static Taken taken(ReceivedOperation operation) {
        Operation read = OperationJson.read(operation.kind(), AnswerJson.tree(operation.body()))
                .operation();
        if (read == null) {
            throw new IllegalStateException("operation " + operation.id() + " was taken and does not read");
        }
        return new Taken(operation.id(), operation.device(), operation.at(), operation.personId(), read);
    }
}
