package changeover.scheduling.closeout;

import changeover.contracts.tenants.Businesses;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * What a visit's sheet says becomes rows as it is said; closing it moves the stock, writes the unit's history, opens what
 * is to follow and ends the visit, all at once, and is then told.
 */
@ApplicationScoped
class Closing {

    @Inject
    SheetRows sheetRows;

    @Inject
    MachineRows machines;

    @Inject
    Dangers dangers;

    @Inject
    ConsequenceRows consequences;

    @Inject
    Closures closures;

    @Inject
    StockPlaces places;

    @Inject
    Visits visits;

    @Inject
    GivenVisits given;

    @Inject
    Businesses businesses;

    @Inject
    Event<VisitClosed> closed;

    void follow(VisitAtHand visit, Sheet before, Sheet now, UUID by, Instant at) {
        ClosingDay days = new ClosingDay(businesses.current().zone(), at);
        LocalDate day = days.of(now.of("close").map(Taken::at).orElse(at), visit.day());
        UUID van = van(visit, by, now);
        machines.follow(visit, before, now, day);
        sheetRows.follow(visit, before, now, van, day);
        dangers.tell(visit, before, now, day);
        if (now.isClosed()) {
            close(visit, now, by, van, day, at);
        }
    }

    private void close(VisitAtHand visit, Sheet sheet, UUID by, UUID van, LocalDate day, Instant at) {
        UUID technician = visit.technician() == null ? by : visit.technician();
        Closure closure = Closure.of(visit, technician, day, at);
        closure.follow(sheet);
        closures.keep(closure);
        sheetRows.date(visit.id(), day);
        consequences.follow(visit, Consequences.NONE, Consequences.of(sheet), closure, van, sheet);
        given.closed(visit.id(), day);
        visits.close(visit.id(), day);
        closed.fire(facts(visit, sheet, closure));
        machines.close(visit, sheet, day);
    }

    /** Where parts come from when nobody says so; nowhere while no part is on the sheet. */
    UUID van(VisitAtHand visit, UUID by, Sheet sheet) {
        boolean needed = !sheet.each(Operation.PartTaken.class, (_, part) -> part).stream()
                .filter(part -> part.place() == null)
                .toList()
                .isEmpty();
        UUID nowhere = new UUID(0, 0);
        return needed ? places.usual(visit.technician(), by).map(StockPlace::id).orElse(nowhere) : nowhere;
    }

    VisitClosed facts(VisitAtHand visit, Sheet sheet, Closure closure) {
        List<VisitClosed.Part> parts = sheet.each(
                Operation.PartTaken.class,
                (taken, part) ->
                        new VisitClosed.Part(taken.id(), part.part(), part.quantity(), part.equipment(), part.why()));
        List<UUID> findings = sheet.each(Operation.Found.class, (taken, _) -> taken.id());
        return new VisitClosed(
                visit.id(),
                visit.homeId(),
                visit.agreementId(),
                visit.kind(),
                visit.answersId(),
                closure.technicianId(),
                closure.day(),
                sheet.minutes().orElse(0),
                visit.minutes(),
                sheet.extraMinutes(),
                parts,
                findings);
    }
}
