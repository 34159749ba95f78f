package changeover.scheduling.orders;

import changeover.contracts.calendar.Window;
import changeover.contracts.merging.HomeMerges;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The parts that visits of the current business wait for: ordered, arrived onto a place, told, used by a second visit. */
@ApplicationScoped
public class PartOrders {

    @Inject
    EntityManager rows;

    @Inject
    OrderLists lists;

    @Inject
    Ordering ordering;

    @Inject
    Visits visits;

    @Inject
    HomeMerges merges;

    @Inject
    Stock stock;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Event<SecondVisitMade> secondVisits;

    /** Writes an order down; the same id again gives the order that is there. */
    public PartOrder order(UUID id, NewOrder facts) {
        if (lists.one(id).isEmpty()) {
            ordering.order(id, facts, today.day());
        }
        return found(id);
    }

    /** The supplier says another day. @param version of the order as it was shown */
    public void promise(UUID id, LocalDate expected, int version) {
        PartOrder order = locked(id);
        refuseOver(order);
        if (order.version() != version) {
            throw Refusal.of("changed-meanwhile").thrown();
        }
        if (expected.isBefore(order.orderedOn())) {
            throw Refusal.of("part-order.expected-before").at("expected").thrown();
        }
        rows.createNativeQuery("update part_order set expected_on = :day, version = version + 1 where id = :id")
                .setParameter("day", expected)
                .setParameter("id", id)
                .executeUpdate();
    }

    /** It came, all or some of it, and lies on a place from now on. @param arrival the operation; the same one again changes nothing */
    public void arrive(UUID arrival, UUID id, BigDecimal quantity, UUID place) {
        PartOrder order = locked(id);
        if (stock.placeOf(arrival).isPresent()) {
            return;
        }
        BigDecimal rest = order.facts().rest();
        if (quantity.compareTo(rest) > 0) {
            throw Refusal.of("part-order.more-than-ordered", Map.of("rest", rest))
                    .at("quantity")
                    .thrown();
        }
        stock.receive(arrival, place, List.of(new Amount(order.partCode(), quantity)), order.supplier());
        rows.createNativeQuery("insert into part_arrival (id, order_id, place_id, quantity, day)"
                        + " values (:id, :order, :place, :quantity, :day)")
                .setParameter("id", arrival)
                .setParameter("order", id)
                .setParameter("place", place)
                .setParameter("quantity", quantity)
                .setParameter("day", today.day())
                .executeUpdate();
    }

    /** The customer was told, now. */
    public void tell(UUID id, ToldHow how, String who) {
        PartOrder order = locked(id);
        refuseOver(order);
        if (who.isBlank()) {
            throw Refusal.of("text.missing").at("who").thrown();
        }
        rows.createNativeQuery("insert into part_told (order_id, at, how, who, here)"
                        + " values (:order, :at, :how, :who, :here)")
                .setParameter("order", id)
                .setParameter("at", today.now())
                .setParameter("how", how.code())
                .setParameter("who", who.strip())
                .setParameter("here", order.facts().rest().signum() == 0)
                .executeUpdate();
    }

    /**
     * Somebody goes there again with the part, and with whatever else the same visit waits for.
     *
     * @param last null for two weeks after everything should be here
     * @return the visit; its day is given like any other's
     */
    public UUID secondVisit(UUID id, int minutes, @Nullable LocalDate last) {
        PartOrder asked = locked(id);
        refuseOver(asked);
        if (asked.hasSecond()) {
            throw Refusal.of("part-order.visit-there").thrown();
        }
        LocalDate day = today.day();
        List<PartOrder> together = lists.ofVisits(List.of(asked.visitId())).stream()
                .filter(one -> one.visitId().equals(asked.visitId()))
                .filter(one -> !OrderStanding.of(one.facts(), day).isOver())
                .filter(one -> !one.hasSecond())
                .toList();
        LocalDate first = SecondVisit.earliest(together, day);
        LocalDate end = last == null ? first.plusDays(SecondVisit.DAYS) : last;
        if (end.isBefore(first)) {
            throw Refusal.of("part-order.visit-before-part", Map.of("day", first))
                    .at("last")
                    .thrown();
        }
        Visit answered = visits.find(asked.visitId()).orElseThrow();
        UUID visit = visits.make(SecondVisit.of(
                        answered,
                        merges.living(answered.homeId()),
                        together,
                        Window.ofDays(first, end),
                        minutes,
                        businesses.current().locale()))
                .id();
        for (PartOrder one : together) {
            rows.createNativeQuery("insert into part_second_visit (order_id, visit_id) values (:order, :visit)")
                    .setParameter("order", one.id())
                    .setParameter("visit", visit)
                    .executeUpdate();
        }
        secondVisits.fire(new SecondVisitMade(asked.visitId(), visit));
        return visit;
    }

    /** What has not come will not come. */
    public void giveUp(UUID id, String why) {
        PartOrder order = locked(id);
        if (order.facts().rest().signum() == 0) {
            throw Refusal.of("part-order.nothing-to-come").thrown();
        }
        if (why.isBlank()) {
            throw Refusal.of("text.missing").at("why").thrown();
        }
        rows.createNativeQuery("insert into part_order_ending (order_id, day, why) values (:order, :day, :why)")
                .setParameter("order", id)
                .setParameter("day", today.day())
                .setParameter("why", why.strip())
                .executeUpdate();
    }

    /** The order as it stands while nobody else writes about it. */
    PartOrder locked(UUID id) {
        rows.createNativeQuery("select id from part_order where id = :id for update", Object.class)
                .setParameter("id", id)
                .getResultList();
        return found(id);
    }

    private PartOrder found(UUID id) {
        return lists.one(id).orElseThrow(() -> Refusal.of("part-order.unknown").thrown());
    }

    private void refuseOver(PartOrder order) {
        if (OrderStanding.of(order.facts(), today.day()).isOver()) {
            throw Refusal.of("part-order.over").thrown();
        }
    }
}
