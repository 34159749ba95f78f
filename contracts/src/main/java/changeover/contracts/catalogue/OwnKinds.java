package changeover.contracts.catalogue;

import changeover.contracts.words.Checks;
import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.FlushModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The kinds of equipment that the current business added, or wrote over those that are shipped. */
@ApplicationScoped
public class OwnKinds {

    private static final String TABLE = "own_kind";

    @Inject
    EntityManager rows;

    @Inject
    OwnBodies bodies;

    public List<OwnRow<Kind>> all() {
        return bodies.all(TABLE, Kind.class);
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

    private static void check(Kind kind) {
        var checks = new Checks();
        checks.refuseIf(!OwnTasks.isCode(kind.code()), "code", "code.shape");
        checks.line("wordingEn", kind.wording().en());
        checks.line("wordingFr", kind.wording().fr());
        for (List<Fact> facts : List.of(kind.fits(), kind.nameplate())) {
            for (Fact fact : facts) {
                checks.refuseIf(!OwnTasks.isCode(fact.name()), "facts", "code.shape");
                checks.refuseIf(
                        fact.wording().en().isBlank() || fact.wording().fr().isBlank(), "facts", "text.missing");
                checks.refuseIf(
                        fact.form() == Fact.Form.CHOICE && fact.choices().isEmpty(), "facts", "own-kind.no-choices");
            }
            checks.refuseIf(
                    facts.stream().map(Fact::name).distinct().count() != facts.size(), "facts", "own-kind.fact-twice");
        }
        checks.orRefuse();
    }
}
