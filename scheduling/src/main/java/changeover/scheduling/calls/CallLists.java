package changeover.scheduling.calls;

import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Calls as lists: what waits in the order in which it is answered, and what is over, the newest first. */
@ApplicationScoped
public class CallLists {

    /** More than any shop has open at once; beyond it the oldest promises are shown. */
    private static final int MOST = 500;

    private static final String FROM =
            """
            select c.id, c.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, coalesce(x.caller, c.caller) as caller,
                   case when x.id is null then c.phone else x.phone end as phone, c.rang_at,
                   coalesce(x.trouble, c.trouble) as trouble, coalesce(x.heat, c.heat) as heat,
                   array_to_string(coalesce(x.risks, c.risks), ',') as risks,
                   coalesce(x.promised_by, c.promised_by) as promised_by, c.agreement_id is not null as planned, o.how, o.visit_id,
                   coalesce(a.day, w.day) as day, a.starts, coalesce(m.name, p.name) as technician, e.how as ended
              from call c
              join home h on (h.tenant_id, h.id) = (c.tenant_id, c.home_id)
              left join call_outcome o on (o.tenant_id, o.call_id) = (c.tenant_id, c.id)
              left join visit v on (v.tenant_id, v.id) = (o.tenant_id, o.visit_id)
              left join appointment a on (a.tenant_id, a.visit_id) = (o.tenant_id, o.visit_id)
              left join membership m on (m.tenant_id, m.person_id) = (a.tenant_id, a.technician_id)
              left join visit_ending e on (e.tenant_id, e.visit_id) = (o.tenant_id, o.visit_id)
            """ + GivenOut.JOINED + CallVersions.NEWEST + " where c.tenant_id = current_tenant() ";

    private static final String WAITS = "(o.id is null or o.how = 'visit' and e.id is null)";

    /**
     * A call in a list.
     *
     * @param became null while nobody has answered it
     * @param ended how the visit it became ended; null while it has not, or there is none
     */
    public record Row(
            UUID id,
            UUID homeId,
            String home,
            String caller,
            @Nullable String phone,
            Instant rangAt,
            Trouble trouble,
            Heat heat,
            Set<Risk> risks,
            Instant promisedBy,
            boolean planned,
            @Nullable Became became,
            @Nullable UUID visitId,
            @Nullable LocalDate day,
            @Nullable LocalTime starts,
            @Nullable String technician,
            @Nullable String ended) {

        public Urgency urgency() {
            return Urgency.of(trouble, heat, risks);
        }

        /** Nobody has answered it, or somebody still has to go there. */
        public boolean waits() {
            return became == null || became == Became.VISIT && ended == null;
        }

        public WaitingCall waiting() {
            return new WaitingCall(became != null, urgency(), promisedBy, rangAt);
        }
    }

    /**
     * @param open how many nobody has answered
     * @param late how many of those, and of the ones whose visit is still to be, are past their promise
     */
    public record Counts(int open, int late) {}

    @Inject
    EntityManager rows;

    /** What waits: unanswered first, then by risk, then by promise. */
    public List<Row> waiting() {
        return read(rows.createNativeQuery(
                                FROM + " and " + WAITS + " order by coalesce(x.promised_by, c.promised_by)",
                                Tuple.class)
                        .setMaxResults(MOST))
                .stream()
                .sorted(Comparator.comparing(Row::waiting, WaitingCall.ORDER))
                .toList();
    }

    /** What is over, the newest first. */
    public List<Row> over(int from, int count) {
        return read(rows.createNativeQuery(FROM + " and not " + WAITS + " order by c.rang_at desc, c.id", Tuple.class)
                .setFirstResult(from)
                .setMaxResults(count));
    }

    /** Every call about a home, the newest first. */
    public List<Row> ofHome(UUID homeId, int count) {
        return read(rows.createNativeQuery(FROM + " and c.home_id = :home order by c.rang_at desc, c.id", Tuple.class)
                .setParameter("home", homeId)
                .setMaxResults(count));
    }

    public Counts counts(Instant now) {
        var row = (Tuple) rows.createNativeQuery("""
                        select count(*) filter (where o.id is null) as open,
                               count(*) filter (where coalesce(x.promised_by, c.promised_by) < :now) as late
                          from call c
                        """ + CallVersions.NEWEST + """
                          left join call_outcome o on (o.tenant_id, o.call_id) = (c.tenant_id, c.id)
                          left join visit_ending e on (e.tenant_id, e.visit_id) = (o.tenant_id, o.visit_id)
                         where c.tenant_id = current_tenant()
                        """ + " and " + WAITS, Tuple.class)
                .setParameter("now", now)
                .getSingleResult();
        return new Counts(
                row.get("open", Number.class).intValue(),
                row.get("late", Number.class).intValue());
    }

    @SuppressWarnings("unchecked")
    private static List<Row> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream().map(CallLists::row).toList();
    }

    private static Row row(Tuple row) {
        String how = row.get("how", String.class);
        return new Row(
                row.get("id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("caller", String.class),
                row.get("phone", String.class),
                row.get("rang_at", Instant.class),
                Trouble.ofCode(row.get("trouble", String.class)),
                Heat.ofCode(row.get("heat", String.class)),
                risks(row.get("risks", String.class)),
                row.get("promised_by", Instant.class),
                row.get("planned", Boolean.class),
                how == null ? null : Became.ofCode(how),
                row.get("visit_id", UUID.class),
                row.get("day", LocalDate.class),
                row.get("starts", LocalTime.class),
                row.get("technician", String.class),
                row.get("ended", String.class));
    }

    private static Set<Risk> risks(String codes) {
        return Arrays.stream(codes.split(","))
                .filter(code -> !code.isEmpty())
                .map(Risk::ofCode)
                .collect(Collectors.toSet());
    }
}
