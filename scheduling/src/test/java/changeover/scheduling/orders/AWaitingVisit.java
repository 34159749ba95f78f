package changeover.scheduling.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.Shop;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;

/** A visit that was kept and waits for its part, with a shelf, a van and two parts. */
abstract class AWaitingVisit {

    static final String MOTOR = "IND-7";
    static final String GASKET = "GSK-7";
    static final BigDecimal ONE = BigDecimal.ONE;
    static final BigDecimal TWO = BigDecimal.TWO;

    @Inject
    Shop shop;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Visits visits;

    @Inject
    PartOrders orders;

    @Inject
    OrderLists lists;

    @Inject
    PartReturns returns;

    @Inject
    OrderNeeds needs;

    @Inject
    Today today;

    @Inject
    EntityManager rows;

    UUID tenant = new UUID(0, 0);
    UUID visit = new UUID(0, 0);
    UUID shelf = new UUID(0, 0);
    UUID van = new UUID(0, 0);

    void open(VisitKind kind) {
        tenant = shop.open("CA-ON");
        run(() -> {
            parts.keep(new KnownPart(MOTOR, new Wording("Inducer motor", "Moteur"), "C62", null, null));
            parts.keep(new KnownPart(GASKET, new Wording("Gasket", "Joint"), "C62", null, null));
            shelf = places.shelf().orElseThrow().id();
            van = places.van(Shop.TECHNICIAN).orElseThrow().id();
            visit = visits.make(new NewVisit(
                            shop.home("ON"),
                            null,
                            kind,
                            Window.ofDays(today.day(), today.day()),
                            60,
                            null,
                            "No heat",
                            List.of()))
                    .id();
            visits.close(visit, today.day());
        });
    }

    void run(Runnable work) {
        shop.in(tenant, () -> {
            work.run();
            return true;
        });
    }

    UUID order(String part, BigDecimal quantity, int days) {
        UUID id = UUID.randomUUID();
        run(() -> orders.order(
                id,
                new NewOrder(
                        visit,
                        null,
                        part,
                        quantity,
                        "Tannery Supply",
                        today.day().plusDays(days),
                        null)));
        return id;
    }

    void standing(UUID order, OrderStanding expected, NextStep next) {
        run(() -> {
            OrderFacts facts = lists.one(order).orElseThrow().facts();
            assertEquals(expected, OrderStanding.of(facts, today.day()));
            assertEquals(next, NextStep.of(facts, today.day()));
        });
    }

    void held(UUID place, String part, String quantity) {
        run(() -> assertEquals(0, stock.onHand(place, part).compareTo(new BigDecimal(quantity))));
    }

    void refused(String code, Runnable work) {
        assertEquals(code, assertThrows(Refused.class, () -> run(work)).first().code());
    }
}
