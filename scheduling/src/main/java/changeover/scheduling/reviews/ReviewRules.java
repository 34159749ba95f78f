package changeover.scheduling.reviews;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The current business's rules by which closures wait; each stands until somebody ends it. */
@ApplicationScoped
public class ReviewRules {

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @Inject
    Today today;

    /** The same id again changes nothing. */
    public void add(UUID id, ReviewRule rule) {
        if (find(id).isPresent()) {
            return;
        }
        List<Refusal> refusals = rule.refusals();
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        UUID person = rule.person();
        if (person != null && people.of(person).isEmpty()) {
            throw Refusal.of("review.whose").at("person").thrown();
        }
        FindingLevel level = rule.kind() == ReviewKind.SEVERITY ? rule.level() : null;
        rows.createNativeQuery("""
                        insert into review_rule (id, kind, person_id, level, first_count, from_day)
                        values (:id, :kind, cast(:person as uuid), cast(:level as text), cast(:first as int), :from)
                        """)
                .setParameter("id", id)
                .setParameter("kind", rule.kind().code())
                .setParameter("person", person == null ? null : person.toString())
                .setParameter("level", level == null ? null : level.code())
                .setParameter("first", rule.kind() == ReviewKind.FIRST ? String.valueOf(rule.first()) : null)
                .setParameter("from", rule.from())
                .executeUpdate();
    }

    /** From today on it holds nothing more; what waits by it goes on waiting. */
    public void end(UUID id) {
        KnownRule rule =
                find(id).orElseThrow(() -> Refusal.of("review.rule-unknown").thrown());
        if (rule.ended() != null) {
            throw Refusal.of("constraint.a_review_rule_ends_once").thrown();
        }
        rows.createNativeQuery("insert into review_rule_end (rule_id, day) values (:rule, :day)")
                .setParameter("rule", id)
                .setParameter("day", today.day())
                .executeUpdate();
    }

    /** Those that stand, in the order in which they were made. */
    public List<KnownRule> standing() {
        return read(" and e.id is null order by r.id", null);
    }

    /** All of them, those that stand first. */
    public List<KnownRule> all() {
        return read(" order by e.id is not null, r.id", null);
    }

    public Optional<KnownRule> find(UUID id) {
        return read(" and r.id = :id", id).stream().findFirst();
    }

    @SuppressWarnings("unchecked")
    private List<KnownRule> read(String rest, @org.jspecify.annotations.Nullable UUID id) {
        var ask = rows.createNativeQuery("""
                        select r.id, r.kind, r.person_id, r.level, coalesce(r.first_count, 0) as first_count, r.from_day,
                               coalesce(m.name, '') as name, e.day as ended
                          from review_rule r
                          left join membership m on (m.tenant_id, m.person_id) = (r.tenant_id, r.person_id)
                          left join review_rule_end e on (e.tenant_id, e.rule_id) = (r.tenant_id, r.id)
                         where r.tenant_id = current_tenant()
                        """ + rest, Tuple.class);
        if (id != null) {
            ask.setParameter("id", id);
        }
        List<Tuple> found = ask.getResultList();
        return found.stream().map(ReviewRules::row).toList();
    }

    private static KnownRule row(Tuple row) {
        String level = row.get("level", String.class);
        return new KnownRule(
                row.get("id", UUID.class),
                new ReviewRule(
                        ReviewKind.of(row.get("kind", String.class)),
                        row.get("person_id", UUID.class),
                        level == null ? null : FindingLevel.ofCode(level),
                        row.get("first_count", Integer.class),
                        row.get("from_day", LocalDate.class)),
                row.get("name", String.class),
                row.get("ended", LocalDate.class));
    }
}
