package changeover.scheduling.closeout;

import changeover.contracts.catalogue.FindingLevel;
import changeover.scheduling.closeout.Operation.Found;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;

/** Tells at once what must not be used, whether the visit is open, closed or amended. */
@ApplicationScoped
class Dangers {

    @Inject
    Event<NotToBeUsedFound> found;

    void tell(VisitAtHand visit, Sheet before, Sheet now, LocalDate day) {
        List<NotToBeUsedFound.Seen> fresh = now.standing().values().stream()
                .filter(taken -> before.of(taken.id()).isEmpty())
                .filter(taken ->
                        taken.operation() instanceof Found said && said.level().equals(FindingLevel.DO_NOT_USE.code()))
                .map(taken -> seen(visit, taken, (Found) taken.operation()))
                .toList();
        if (!fresh.isEmpty()) {
            found.fire(new NotToBeUsedFound(visit.id(), visit.homeId(), day, fresh));
        }
    }

    private static NotToBeUsedFound.Seen seen(VisitAtHand visit, Taken taken, Found said) {
        return new NotToBeUsedFound.Seen(
                taken.id(),
                taken.by(),
                taken.at(),
                said.equipment(),
                SheetRows.ticket(visit, said),
                said.sentence(),
                said.text(),
                said.text() == null ? null : said.language());
    }
}
