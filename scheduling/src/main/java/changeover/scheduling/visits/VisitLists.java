package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Visits as a list: those whose day, or else whose window, meets some days. */
@ApplicationScoped
public class VisitLists {

    private static final String FROM = """
            select v.id, v.home_id, h.street, h.city, v.agreement_id, v.kind, v.window_from, v.window_until, v.minutes,
                   coalesce(a.day, w.day) as day, a.starts, a.technician_id, m.name as technician, w.partner_id, p.name as partner,
                   e.how, e.day as ended_on
              from visit v
              join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
              left join appointment a on (a.tenant_id, a.visit_id) = (v.tenant_id, v.id)
              left join membership m on (m.tenant_id, m.person_id) = (a.tenant_id, a.technician_id)
              left join visit_ending e on (e.tenant_id, e.visit_id) = (v.tenant_id, v.id)
            """ + GivenOut.JOINED;

    /**
     * A visit in a list.
     *
     * @param last the last day of its window
     * @param day the day it has with us, or on which the partner goes
     * @param partner who makes it, or made it, instead of us
     * @param how closed, cancelled, no_access or not_kept; null while it is open
     */
    public record Row(
            UUID id,
            UUID homeId,
            String street,
            String city,
            @Nullable UUID agreementId,
            String kind,
            LocalDate first,
            LocalDate last,
            int minutes,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            @Nullable UUID technicianId,
            @Nullable String technician,
            @Nullable UUID partnerId,
            @Nullable String partner,
            @Nullable String how,
            @Nullable LocalDate endedOn) {}

    @Inject
    EntityManager rows;

    /** The visits of those days, by day; one without a day counts by its window. A technician sees their own only. */
    public List<Row> between(Window days, @Nullable UUID technicianId, int from, int count) {
        String sql = FROM
                + """
                 where v.tenant_id = current_tenant()
                   and (coalesce(e.day, a.day, w.day) >= :from and coalesce(e.day, a.day, w.day) < :until
                        or coalesce(e.day, a.day, w.day) is null and v.window_from < :until and v.window_until > :from)
                """
                + (technicianId == null ? "" : " and a.technician_id = :technician")
                + " order by coalesce(e.day, a.day, w.day, v.window_until), a.starts, v.id offset :skip limit :count";
        var query = rows.createNativeQuery(sql, Tuple.class)
                .setParameter("from", days.from())
                .setParameter("until", days.until())
                .setParameter("skip", from)
                .setParameter("count", count);
        if (technicianId != null) {
            query.setParameter("technician", technicianId);
        }
        return read(query.getResultList());
    }

    /** One visit as its row. */
    public Optional<Row> one(UUID id) {
        return read(rows.createNativeQuery(FROM + " where v.tenant_id = current_tenant() and v.id = :id", Tuple.class)
                        .setParameter("id", id)
                        .getResultList())
                .stream()
                .findFirst();
    }

    @SuppressWarnings("unchecked")
    private static List<Row> read(List<?> found) {
        return ((List<Tuple>) found).stream().map(VisitLists::row).toList();
    }

    private static Row row(Tuple row) {
        return new Row(
                row.get("id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("street", String.class),
                row.get("city", String.class),
                row.get("agreement_id", UUID.class),
                row.get("kind", String.class),
                row.get("window_from", LocalDate.class),
                row.get("window_until", LocalDate.class).minusDays(1),
                row.get("minutes", Integer.class),
                row.get("day", LocalDate.class),
                row.get("starts", LocalTime.class),
                row.get("technician_id", UUID.class),
                row.get("technician", String.class),
                row.get("partner_id", UUID.class),
                row.get("partner", String.class),
                row.get("how", String.class),
                row.get("ended_on", LocalDate.class));
    }
}
