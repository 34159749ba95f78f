package changeover.deploy.demo;

import changeover.contracts.Examples;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.SettableClock;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.reviews.ReviewKind;
import changeover.scheduling.reviews.ReviewRule;
import changeover.scheduling.reviews.ReviewRules;
import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.MachineStops;
import changeover.scheduling.stopped.NewStop;
import changeover.scheduling.stopped.StopDeeds;
import changeover.scheduling.stopped.StopEnd;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;

/** One furnace that must not be used, one that a gas fitter put back, and a closed visit that waits to be looked over. */
@ApplicationScoped
class DemoStops {

    private static final String FURNACE = "gas-furnace";
    private static final int STOPPED_BEFORE = 9;
    private static final int BACK_BEFORE = 7;
    private static final LocalTime CALLED_AT = LocalTime.of(18, 40);
    private static final int MINUTES = 50;

    @Inject
    SettableClock clock;

    @Inject
    CurrentTenant current;

    @Inject
    AllEquipment equipment;

    @Inject
    MachineStops stops;

    @Inject
    StopDeeds deeds;

    @Inject
    ReviewRules rules;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    DemoCloseOut closeOut;

    /** A furnace and the home in which it stands. */
    private record Furnace(UUID home, UUID machine) {}

    void make(
            UUID tenant,
            Examples.Shop shop,
            List<DemoShop.Hand> hands,
            List<DemoHomes.Entered> homes,
            LocalDate today) {
        boolean french = shop.language().equals("fr");
        UUID owner = hands.getFirst().person();
        List<DemoShop.Hand> crew = hands.stream()
                .filter(hand -> hand.worker().role().equals("technician"))
                .toList();
        List<Furnace> furnaces = current.run(tenant, owner, () -> furnaces(homes));
        if (furnaces.size() > 1) {
            putBack(tenant, furnaces.get(0), crew, today, french);
            stop(tenant, furnaces.get(1), crew.getFirst(), today.minusDays(1), french);
        }
        clock.setDay(today.minusDays(1));
        current.run(
                tenant,
                owner,
                () -> rules.add(
                        UUID.randomUUID(),
                        new ReviewRule(ReviewKind.SEVERITY, null, FindingLevel.URGENT, 0, today.minusDays(1))));
        DemoShop.Hand last = crew.getLast();
        current.run(
                tenant,
                last.person(),
                () -> closes(homes.get(homes.size() / 2).id(), last, today.minusDays(1), french));
        clock.setDay(today);
    }

    private List<Furnace> furnaces(List<DemoHomes.Entered> homes) {
        return homes.stream()
                .flatMap(home -> equipment.ofHome(home.id()).stream()
                        .filter(machine -> machine.kind().equals(FURNACE))
                        .map(Equipment::id)
                        .limit(1)
                        .map(machine -> new Furnace(home.id(), machine)))
                .limit(2)
                .toList();
    }

    /** Stopped by one, repaired and put back by another who holds the ticket. */
    private void putBack(UUID tenant, Furnace furnace, List<DemoShop.Hand> crew, LocalDate today, boolean french) {
        DemoShop.Hand first = crew.getFirst();
        DemoShop.Hand fitter = crew.get(1);
        LocalDate stopped = today.minusDays(STOPPED_BEFORE);
        UUID stop = stop(tenant, furnace, first, stopped, french);
        current.run(
                tenant,
                first.person(),
                () -> deeds.heat(stop, new HeatAnswer(false, false, null, null, null), first.person()));
        LocalDate back = today.minusDays(BACK_BEFORE);
        clock.setDay(back);
        current.run(
                tenant,
                fitter.person(),
                () -> deeds.end(
                        stop,
                        StopEnd.IN_SERVICE,
                        french
                                ? "Évent dégagé, brûleur nettoyé, 4 ppm de CO dans les gaz"
                                : "Vent cleared, burner cleaned, 4 ppm of CO in the flue",
                        fitter.person()));
    }

    private UUID stop(UUID tenant, Furnace furnace, DemoShop.Hand hand, LocalDate day, boolean french) {
        UUID id = UUID.randomUUID();
        clock.setDay(day);
        current.run(tenant, hand.person(), () -> {
            var _ = stops.stop(
                    id,
                    new NewStop(
                            furnace.home(),
                            furnace.machine(),
                            null,
                            french ? "Suie au-dessus de la porte du brûleur" : "Soot above the burner door",
                            french ? "fr" : "en",
                            french ? "Son interrupteur et son robinet" : "Its own switch and valve",
                            "gas"),
                    hand.person());
            deeds.done(id, "tag", hand.worker().name(), day, null);
        });
        return id;
    }

    private void closes(UUID home, DemoShop.Hand hand, LocalDate day, boolean french) {
        Visit visit = visits.make(new NewVisit(
                home,
                null,
                VisitKind.CALL,
                Window.ofDays(day, day),
                MINUTES,
                null,
                french ? "Bruit au ventilateur" : "A noise at the fan",
                List.of()));
        appointments.give(
                visit.id(), new Appointments.Slot(hand.person(), day, CALLED_AT, CALLED_AT.plusMinutes(MINUTES)));
        closeOut.closeCall(
                visit.id(),
                hand,
                CALLED_AT,
                MINUTES,
                List.of(new Operation.Found(
                        FindingLevel.URGENT.code(),
                        null,
                        french
                                ? "Roulement du ventilateur usé, il peut bloquer d’un jour à l’autre"
                                : "Fan bearing worn, it may seize any day",
                        french ? "fr" : "en",
                        null,
                        null,
                        french ? "La personne de la maison" : "The household",
                        true,
                        "estimate",
                        null)));
    }
}
