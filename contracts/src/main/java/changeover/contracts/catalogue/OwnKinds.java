package changeover.contracts.catalogue;

import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.FlushModeType;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The kinds of equipment that the current business added, or wrote over those that are shipped. */
@ApplicationScoped
public class OwnKinds {

    private static final String TABLE = "own_kind";

    @Inject
    EntityManager rows;

    @Inject
    OwnBodies bodies;

    @Inject
    OwnCatalogue catalogue;

    public List<OwnRow<Kind>> all() {
        return bodies.all(TABLE, Kind.class);
    }

    public Optional<OwnRow<Kind>> get(UUID id) {
        return bodies.get(TABLE, id, Kind.class);
    }

    /** The kind as this business knows it: its own, else the shipped one; read without writing anything that waits. */
    public Optional<Kind> find(String code) {
        Optional<Kind> own = rows.createNativeQuery(
                        "select cast(body as text) from own_kind where code = :code", String.class)
                .setParameter("code", code)
                .setFlushMode(FlushModeType.COMMIT)
                .getResultStream()
                .map(body -> CatalogueJson.read((String) body, Kind.class))
                .findFirst();
        return own.or(() -> Catalogue.shipped().findKind(code));
    }

    public UUID add(Kind kind) {
        check(kind);
        return bodies.add(TABLE, kind.code(), kind);
    }

    /** False when there is none of that id and code here. Refused when somebody else changed it meanwhile. */
    public boolean rewrite(UUID id, Kind kind, FilledOn form) {
        check(kind);
        return bodies.rewrite(TABLE, id, kind.code(), kind, form);
    }

    /** From a day on no new machine is of this kind; null offers it again. False when there is none of that id here. */
    public boolean withdraw(UUID id, @Nullable LocalDate day) {
        return bodies.withdraw(TABLE, id, day);
    }

    private void check(Kind kind) {
        List<Refusal> wrong = KindRules.of(kind, catalogue.catalogue());
        if (!wrong.isEmpty()) {
            throw new Refused(wrong);
        }
    }
}
