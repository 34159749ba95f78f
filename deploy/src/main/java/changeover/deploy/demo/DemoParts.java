package changeover.deploy.demo;

import changeover.contracts.Examples;
import changeover.contracts.calendar.Window;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.words.Wording;
import changeover.scheduling.orders.NewOrder;
import changeover.scheduling.orders.NewReturn;
import changeover.scheduling.orders.PartOrders;
import changeover.scheduling.orders.PartReturns;
import changeover.scheduling.orders.ReturnWhy;
import changeover.scheduling.orders.ToldHow;
import changeover.scheduling.returns.NewReturnVisit;
import changeover.scheduling.returns.ReturnCause;
import changeover.scheduling.returns.ReturnVisits;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.VisitLists;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Visits that wait for a part: one that is late, one on its way, one that came with its second visit, and one that was wrong. */
@ApplicationScoped
public class DemoParts {

    private static final int DAYS_AGO = 6;
    private static final String MOTOR = "IND-7";
    private static final String BOARD = "BRD-12";

    @Inject
    SettableClock clock;

    @Inject
    CurrentTenant current;

    @Inject
    Parts parts;

    @Inject
    StockPlaces places;

    @Inject
    VisitLists visits;

    @Inject
    PartOrders orders;

    @Inject
    PartReturns returns;

    @Inject
    ReturnVisits comebacks;

    void waitFor(UUID tenant, UUID office, Examples.Shop shop, LocalDate today) {
        LocalDate ordered = today.minusDays(DAYS_AGO);
        boolean french = shop.language().equals("fr");
        List<UUID> waiting = current.run(tenant, office, () -> waiting(today));
        if (waiting.size() < 4) {
            return;
        }
        String supplier = french ? "Pièces du Cap" : "Tannery Supply";
        clock.setDay(ordered);
        UUID here = current.run(tenant, office, () -> {
            parts.keep(
                    new KnownPart(MOTOR, new Wording("Inducer motor", "Moteur de tirage induit"), "C62", null, null));
            parts.keep(new KnownPart(BOARD, new Wording("Control board", "Carte de commande"), "C62", null, null));
            order(waiting.get(0), BOARD, supplier, today.minusDays(2));
            order(waiting.get(1), MOTOR, supplier, today.plusDays(3));
            return order(waiting.get(2), MOTOR, supplier, today.minusDays(1));
        });
        UUID wrong = current.run(tenant, office, () -> order(waiting.get(3), BOARD, supplier, today.minusDays(1)));
        clock.setDay(today);
        current.run(tenant, office, () -> {
            UUID shelf = places.shelf().orElseThrow().id();
            orders.arrive(UUID.randomUUID(), here, BigDecimal.ONE, shelf);
            orders.tell(here, ToldHow.CALL, french ? "la personne à l’appareil" : "whoever answered");
            orders.secondVisit(here, 90, null);
            orders.arrive(UUID.randomUUID(), wrong, BigDecimal.ONE, shelf);
            returns.giveBack(
                    UUID.randomUUID(),
                    new NewReturn(
                            wrong,
                            BigDecimal.ONE,
                            shelf,
                            null,
                            ReturnWhy.WRONG,
                            french ? "Pour un autre modèle" : "For another model",
                            Money.of("186.00", "CAD")));
            comebacks.make(new NewReturnVisit(
                    waiting.get(0),
                    ReturnCause.SETTING,
                    null,
                    null,
                    french ? "Le thermostat clignote encore" : "The thermostat blinks again",
                    45,
                    today.plusDays(4)));
            return here;
        });
    }

    /** The last visits that were kept. */
    private List<UUID> waiting(LocalDate today) {
        return visits.between(Window.ofDays(today.minusDays(60), today), null, 0, 200).stream()
                .filter(row -> "closed".equals(row.how()))
                .toList()
                .reversed()
                .stream()
                .limit(4)
                .map(VisitLists.Row::id)
                .toList();
    }

    private UUID order(UUID visit, String part, String supplier, LocalDate expected) {
        UUID id = UUID.randomUUID();
        orders.order(id, new NewOrder(visit, null, part, BigDecimal.ONE, supplier, expected, null));
        return id;
    }
}
