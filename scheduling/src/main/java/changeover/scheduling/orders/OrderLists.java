package changeover.scheduling.orders;

import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Parts on order as lists: what is open by the day it is expected, the overdue first, and what is over, the newest first. */
@ApplicationScoped
public class OrderLists {

    /**
     * The visit that waited for an order {@code o}, of which {@code a} is what came, was closed after that with as many of the part in it
     * as came for it in all its orders.
     */
    static final String USED_UP = """
            exists (select from closure c
              where (c.tenant_id, c.visit_id) = (o.tenant_id, o.visit_id) and a.day <= c.day and a.at < c.made_at
                and (select coalesce(sum(u.quantity), 0) from part_used u
                      where (u.tenant_id, u.visit_id, u.part_code) = (o.tenant_id, o.visit_id, o.part_code))
                  >= greatest(0.0001,
                    (select coalesce(sum(x.quantity), 0)
                       from part_order p join part_arrival x on (x.tenant_id, x.order_id) = (p.tenant_id, p.id)
                      where (p.tenant_id, p.visit_id, p.part_code) = (o.tenant_id, o.visit_id, o.part_code))
                    - (select coalesce(sum(x.quantity), 0)
                       from part_order p join part_return x on (x.tenant_id, x.order_id) = (p.tenant_id, p.id)
                      where (p.tenant_id, p.visit_id, p.part_code) = (o.tenant_id, o.visit_id, o.part_code))))
            """;

    private static final String FROM = """
            select o.id, o.visit_id, o.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, o.equipment_id,
                   q.name as machine, o.part_code, coalesce(p.name_en, o.part_code) as name_en,
                   coalesce(p.name_fr, o.part_code) as name_fr, o.quantity, o.supplier, o.ordered_on, o.expected_on, o.words,
                   coalesce(m.name, '') as ordered_by, o.version, coalesce(a.quantity, 0) as arrived, a.day as arrived_on,
                   coalesce(r.quantity, 0) as returned, t.at as told_at, t.how as told_how, t.who as told_who, t.here,
                   s.visit_id as second_id, s.day as second_day, s.technician, s.ended, g.day as given_up_on, g.why,
                   f.visit_id as own_id, f.day as own_day, f.technician as own_technician, f.ended as own_ended, l.name as lies_at
              from part_order o
              join home h on (h.tenant_id, h.id) = (o.tenant_id, o.home_id)
              left join equipment q on (q.tenant_id, q.id) = (o.tenant_id, o.equipment_id)
              left join part p on (p.tenant_id, p.code) = (o.tenant_id, o.part_code)
              left join membership m on (m.tenant_id, m.person_id) = (o.tenant_id, o.made_by)
              left join part_order_ending g on (g.tenant_id, g.order_id) = (o.tenant_id, o.id)
              left join lateral (select sum(x.quantity) as quantity, max(x.day) as day, max(x.made_at) as at
                                   from part_arrival x
                                  where (x.tenant_id, x.order_id) = (o.tenant_id, o.id)) a on true
              left join lateral (select sum(x.quantity) as quantity from part_return x
                                  where (x.tenant_id, x.order_id) = (o.tenant_id, o.id)) r on true
              left join lateral (select x.at, x.how, x.who, x.here from part_told x
                                  where (x.tenant_id, x.order_id) = (o.tenant_id, o.id)
                                  order by x.at desc, x.id desc limit 1) t on true
              left join lateral (select w.visit_id, d.day, n.name as technician, e.how as ended
                                   from part_second_visit w
                                   left join appointment d on (d.tenant_id, d.visit_id) = (w.tenant_id, w.visit_id)
                                   left join membership n on (n.tenant_id, n.person_id) = (d.tenant_id, d.technician_id)
                                   left join visit_ending e on (e.tenant_id, e.visit_id) = (w.tenant_id, w.visit_id)
                                  where (w.tenant_id, w.order_id) = (o.tenant_id, o.id)
                                  order by w.id desc limit 1) s on true
              left join lateral (select v.id as visit_id, d.day, n.name as technician, e.how as ended
                                   from visit v
                                   left join appointment d on (d.tenant_id, d.visit_id) = (v.tenant_id, v.id)
                                   left join membership n on (n.tenant_id, n.person_id) = (d.tenant_id, d.technician_id)
                                   left join visit_ending e on (e.tenant_id, e.visit_id) = (v.tenant_id, v.id)
                                  where (v.tenant_id, v.id) = (o.tenant_id, o.visit_id)
                                    and (e.id is null and (d.day is null or d.day >= a.day)
                                      or e.how = 'closed' and\s""" + USED_UP + """
                                    )) f on true
              left join lateral (select y.name from part_arrival x
                                   join stock_place y on (y.tenant_id, y.id) = (x.tenant_id, x.place_id)
                                  where (x.tenant_id, x.order_id) = (o.tenant_id, o.id)
                                  order by x.day desc, x.id desc limit 1) l on true
             where o.tenant_id = current_tenant()
            """;

    /** As {@link OrderStanding} has it, for the database. */
    private static final String OPEN = """
            (g.id is null and o.quantity > coalesce(a.quantity, 0)
             or coalesce(a.quantity, 0) > coalesce(r.quantity, 0) and s.ended is distinct from 'closed'
                and f.ended is distinct from 'closed')
            """;

    /**
     * @param open orders that are not over
     * @param late of these, those that should have come
     * @param here of these, those that are here and whose visit is not made
     */
    public record Counts(int open, int late, int here) {}

    @Inject
    EntityManager rows;

    public Optional<PartOrder> one(UUID id) {
        return read(rows.createNativeQuery(FROM + " and o.id = :id", Tuple.class)
                        .setParameter("id", id))
                .stream()
                .findFirst();
    }

    public List<PartOrder> open() {
        return read(rows.createNativeQuery(FROM + " and " + OPEN + " order by o.expected_on, o.id", Tuple.class));
    }

    public List<PartOrder> over(int from, int count) {
        return read(rows.createNativeQuery(
                        FROM + " and not " + OPEN + " order by o.ordered_on desc, o.id desc", Tuple.class)
                .setFirstResult(from)
                .setMaxResults(count));
    }

    public List<PartOrder> ofHome(UUID homeId) {
        return read(
                rows.createNativeQuery(FROM + " and o.home_id = :home order by o.ordered_on desc, o.id", Tuple.class)
                        .setParameter("home", homeId));
    }

    /** What one of these visits waits for, and what one of them was made to use. */
    public List<PartOrder> ofVisits(Collection<UUID> visits) {
        return visits.isEmpty()
                ? List.of()
                : read(rows.createNativeQuery(
                                FROM + " and (o.visit_id in (:visits) or s.visit_id in (:visits))"
                                        + " order by o.expected_on, o.id",
                                Tuple.class)
                        .setParameter("visits", visits));
    }

    public Counts counts(LocalDate today) {
        List<PartOrder> open = open();
        List<OrderStanding> standing = open.stream()
                .map(order -> OrderStanding.of(order.facts(), today))
                .toList();
        return new Counts(
                open.size(),
                (int) standing.stream().filter(OrderStanding.LATE::equals).count(),
                (int) standing.stream().filter(OrderStanding.HERE::equals).count());
    }

    @SuppressWarnings("unchecked")
    private static List<PartOrder> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream().map(OrderLists::order).toList();
    }

    private static PartOrder order(Tuple row) {
        return new PartOrder(
                row.get("id", UUID.class),
                row.get("visit_id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("equipment_id", UUID.class),
                row.get("machine", String.class),
                row.get("part_code", String.class),
                new Wording(row.get("name_en", String.class), row.get("name_fr", String.class)),
                plain(row.get("quantity", BigDecimal.class)),
                row.get("supplier", String.class),
                row.get("ordered_on", LocalDate.class),
                row.get("expected_on", LocalDate.class),
                row.get("words", String.class),
                row.get("ordered_by", String.class),
                row.get("version", Integer.class),
                plain(row.get("arrived", BigDecimal.class)),
                row.get("arrived_on", LocalDate.class),
                plain(row.get("returned", BigDecimal.class)),
                row.get("lies_at", String.class),
                told(row),
                going(row, "second_id", "second_day", "technician", "ended"),
                going(row, "own_id", "own_day", "own_technician", "own_ended"),
                ending(row));
    }

    private static PartOrder.@Nullable Told told(Tuple row) {
        Instant at = row.get("told_at", Instant.class);
        return at == null
                ? null
                : new PartOrder.Told(
                        at,
                        ToldHow.of(row.get("told_how", String.class)),
                        row.get("told_who", String.class),
                        Objects.requireNonNull(row.get("here", Boolean.class)));
    }

    private static PartOrder.@Nullable Going going(Tuple row, String id, String day, String technician, String ended) {
        UUID visit = row.get(id, UUID.class);
        return visit == null
                ? null
                : new PartOrder.Going(
                        visit,
                        row.get(day, LocalDate.class),
                        row.get(technician, String.class),
                        row.get(ended, String.class));
    }

    private static PartOrder.@Nullable Ending ending(Tuple row) {
        LocalDate day = row.get("given_up_on", LocalDate.class);
        return day == null ? null : new PartOrder.Ending(day, row.get("why", String.class));
    }

    static BigDecimal plain(BigDecimal quantity) {
        BigDecimal bare = quantity.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
