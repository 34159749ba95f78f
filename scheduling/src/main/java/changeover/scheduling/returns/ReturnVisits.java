package changeover.scheduling.returns;

import changeover.contracts.calendar.Window;
import changeover.contracts.merging.HomeMerges;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitEnd;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The free returns of the current business: made for a visit that was kept, with their cause. */
@ApplicationScoped
public class ReturnVisits {

    private static final String FROM = """
            select r.visit_id, v.answers_id, v.home_id, b.day as answered_on, coalesce(m.name, '') as technician, r.cause,
                   r.part_code, coalesce(p.name_en, r.part_code) as name_en, coalesce(p.name_fr, r.part_code) as name_fr,
                   q.kind, r.words, c.day, coalesce(c.minutes, 0) as minutes
              from return_visit r
              join visit v on (v.tenant_id, v.id) = (r.tenant_id, r.visit_id)
              left join closure b on (b.tenant_id, b.visit_id) = (v.tenant_id, v.answers_id)
              left join membership m on (m.tenant_id, m.person_id) = (b.tenant_id, b.technician_id)
              left join part p on (p.tenant_id, p.code) = (r.tenant_id, r.part_code)
              left join equipment q on (q.tenant_id, q.id) = (r.tenant_id, r.equipment_id)
              left join closure c on (c.tenant_id, c.visit_id) = (r.tenant_id, r.visit_id)
             where r.tenant_id = current_tenant()
            """;

    @Inject
    EntityManager rows;

    @Inject
    Visits visits;

    @Inject
    HomeMerges merges;

    @Inject
    Today today;

    /** Somebody goes back without charge; its day is given like any other's. */
    public UUID make(NewReturnVisit facts) {
        Visit first = visits.find(facts.answersId())
                .orElseThrow(() -> Refusal.of("visit.unknown").thrown());
        if (visits.ending(first.id())
                .filter(end -> end.how() == VisitEnd.CLOSED)
                .isEmpty()) {
            throw Refusal.of("return.visit-not-kept").thrown();
        }
        LocalDate day = today.day();
        if (facts.last().isBefore(day)) {
            throw Refusal.of("call.visit-in-the-past").at("last").thrown();
        }
        if (facts.words().isBlank()) {
            throw Refusal.of("text.missing").at("words").thrown();
        }
        UUID machine = facts.equipmentId();
        refuseStrangers(first, facts.partCode(), machine);
        UUID made = visits.make(new NewVisit(
                        merges.living(first.homeId()),
                        null,
                        VisitKind.RETURN,
                        Window.ofDays(day, facts.last()),
                        facts.minutes(),
                        first.id(),
                        facts.words().strip(),
                        List.of()))
                .id();
        rows.createNativeQuery("""
                        insert into return_visit (visit_id, cause, part_code, equipment_id, words)
                        values (:visit, :cause, cast(:part as text), cast(:machine as uuid), :words)
                        """)
                .setParameter("visit", made)
                .setParameter("cause", facts.cause().code())
                .setParameter("part", facts.partCode())
                .setParameter("machine", machine == null ? null : machine.toString())
                .setParameter("words", facts.words().strip())
                .executeUpdate();
        return made;
    }

    /** @throws changeover.contracts.words.Refused for a part that the visit did not use, or a machine of another home */
    public void refuseStrangers(Visit first, @Nullable String part, @Nullable UUID machine) {
        if (part != null && !partsUsed(first.id()).containsKey(part)) {
            throw Refusal.of("stock.part-not-found").at("part").thrown();
        }
        if (machine != null
                && rows.createNativeQuery("select 1 from equipment q join home h on h.tenant_id = q.tenant_id"
                                + " and (h.id = q.home_id or h.building_id = q.building_id)"
                                + " where h.id = :home and q.id = :machine")
                        .setParameter("home", merges.living(first.homeId()))
                        .setParameter("machine", machine)
                        .getResultList()
                        .isEmpty()) {
            throw Refusal.of("closeout.equipment-not-found").at("equipment").thrown();
        }
    }

    /** The parts that a visit used, by code. */
    @SuppressWarnings("unchecked")
    public Map<String, Wording> partsUsed(UUID visit) {
        List<Tuple> found = rows.createNativeQuery("""
                        select distinct u.part_code, coalesce(p.name_en, u.part_code) as name_en,
                               coalesce(p.name_fr, u.part_code) as name_fr
                          from part_used u
                          left join part p on (p.tenant_id, p.code) = (u.tenant_id, u.part_code)
                         where u.tenant_id = current_tenant() and u.visit_id = :visit order by u.part_code
                        """, Tuple.class)
                .setParameter("visit", visit)
                .getResultList();
        Map<String, Wording> parts = new LinkedHashMap<>();
        found.forEach(row -> parts.put(
                row.get("part_code", String.class),
                new Wording(row.get("name_en", String.class), row.get("name_fr", String.class))));
        return parts;
    }

    /** Those that answer the visit, and the one that it is itself. */
    public List<ReturnVisit> ofVisit(UUID visit) {
        return read(rows.createNativeQuery(
                        FROM + " and (v.answers_id = :visit or r.visit_id = :visit) order by r.id", Tuple.class)
                .setParameter("visit", visit));
    }

    /** Those that were kept in the days. */
    public List<ReturnVisit> kept(Window days) {
        return read(rows.createNativeQuery(
                        FROM + " and c.day >= :from and c.day < :until order by c.day, r.id", Tuple.class)
                .setParameter("from", days.from())
                .setParameter("until", days.until()));
    }

    /** All visits that were kept in the days, returns too. */
    public int visitsKept(Window days) {
        return ((Number) rows.createNativeQuery(
                                "select count(*) from closure where tenant_id = current_tenant() and day >= :from"
                                        + " and day < :until")
                        .setParameter("from", days.from())
                        .setParameter("until", days.until())
                        .getSingleResult())
                .intValue();
    }

    @SuppressWarnings("unchecked")
    private static List<ReturnVisit> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream().map(ReturnVisits::row).toList();
    }

    private static ReturnVisit row(Tuple row) {
        return new ReturnVisit(
                row.get("visit_id", UUID.class),
                row.get("answers_id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("answered_on", LocalDate.class),
                row.get("technician", String.class),
                ReturnCause.of(row.get("cause", String.class)),
                row.get("part_code", String.class) == null
                        ? null
                        : new Wording(row.get("name_en", String.class), row.get("name_fr", String.class)),
                row.get("kind", String.class),
                row.get("words", String.class),
                row.get("day", LocalDate.class),
                row.get("minutes", Number.class).intValue());
    }
}
