package changeover.billing.notices;

import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.change.DayCause;
import changeover.scheduling.dayplan.change.WholeDay;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What became of the visits of a day that moved: where each went, who was written to, and which promise its day breaks. */
@ApplicationScoped
public class WholeDaysMade {

    private static final String MADE = """
            select w.id, w.cause, v.visit_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, v.was_starts, v.told,
              v.day, v.starts, m.name as technician, v.standing,
              exists (select 1 from whole_day_letter l join outbox o on o.tenant_id = l.tenant_id and o.about_id = l.id
                where l.tenant_id = v.tenant_id and l.whole_day_id = v.whole_day_id and l.customer_id = v.customer_id
                  and v.told and o.withdrawn_at is null) as written,
              exists (select 1 from to_ring r where r.tenant_id = v.tenant_id and r.visit_id = v.visit_id
                and r.was_day = w.day and r.was_starts = v.was_starts
                and not exists (select 1 from rung g where g.tenant_id = r.tenant_id and g.ring_id = r.id)) as to_ring,
              t.en, t.fr
            from whole_day w
            join whole_day_visit v on v.tenant_id = w.tenant_id and v.whole_day_id = w.id
            join visit i on i.tenant_id = v.tenant_id and i.id = v.visit_id
            join home h on h.tenant_id = i.tenant_id and h.id = i.home_id
            left join membership m on m.tenant_id = v.tenant_id and m.person_id = v.technician_id
            left join lateral (
              select string_agg(t.wording_en, ', ' order by t.position) as en,
                string_agg(t.wording_fr, ', ' order by t.position) as fr
                from visit_task t where t.tenant_id = v.tenant_id and t.visit_id = v.visit_id
                 and t.due_until <= coalesce(v.day, w.day + 1)) t on true
            where w.day = :day order by w.id, v.was_starts, v.visit_id
            """;

    /**
     * A visit that left the day.
     *
     * @param day null where it went back to the season
     * @param unkept the tasks whose days are over by then; null where none is
     */
    public record Made(
            UUID wholeDay,
            DayCause cause,
            UUID visit,
            String home,
            LocalTime was,
            boolean told,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            @Nullable String technician,
            WholeDay.Standing standing,
            boolean written,
            boolean toRing,
            @Nullable Wording unkept) {}

    @Inject
    EntityManager rows;

    @SuppressWarnings("unchecked")
    public List<Made> of(LocalDate day) {
        List<Tuple> found = rows.createNativeQuery(MADE, Tuple.class)
                .setParameter("day", day)
                .getResultList();
        return found.stream().map(WholeDaysMade::made).toList();
    }

    private static Made made(Tuple row) {
        String en = row.get("en", String.class);
        return new Made(
                row.get("id", UUID.class),
                DayCause.ofCode(row.get("cause", String.class)),
                row.get("visit_id", UUID.class),
                row.get("home", String.class),
                row.get("was_starts", LocalTime.class),
                row.get("told", Boolean.class),
                row.get("day", LocalDate.class),
                row.get("starts", LocalTime.class),
                row.get("technician", String.class),
                WholeDay.Standing.ofCode(row.get("standing", String.class)),
                row.get("written", Boolean.class),
                row.get("to_ring", Boolean.class),
                en == null ? null : new Wording(en, row.get("fr", String.class)));
    }
}
