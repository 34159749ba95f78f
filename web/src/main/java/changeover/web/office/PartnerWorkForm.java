package changeover.web.office;

import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.partnerwork.PartnerWork;
import changeover.web.session.Typed;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;

/** What a form says of a partner's work: every task was done but those that are ticked. */
final class PartnerWorkForm {

    private PartnerWorkForm() {}

    static PartnerWork.Said of(Typed typed) {
        Set<UUID> left = new HashSet<>();
        for (String task : typed.each("notDone")) {
            Ids.read(task)
                    .ifPresentOrElse(
                            left::add,
                            () -> typed.refuse(Refusal.of("typed.choose").at("notDone")));
        }
        LocalDate day = typed.day("day");
        return new PartnerWork.Said(
                day,
                typed.whole("minutes", 0, 1440),
                left,
                typed.line("notDoneWhy", 500),
                typed.line("words", 2000),
                typed.line("receivedBy", 200),
                typed.line("nobodyWhy", 500));
    }
}
