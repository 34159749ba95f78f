package changeover.web.office;

import changeover.contracts.agreements.AgreementLists;
import changeover.contracts.agreements.AgreementState;
import changeover.contracts.agreements.RenewalRow;
import changeover.contracts.agreements.Renewals;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;

/** Plans whose customers owe an answer: renewals that are to be offered, then offers that wait. */
@ApplicationScoped
class AnswersWaiting {

    /** An offer that waits, or a renewal that is to be offered. */
    public record Answer(
            UUID agreementId,
            UUID homeId,
            String home,
            String customer,
            String price,
            String until,
            boolean renewal,
            boolean late,
            String last) {}

    @Inject
    AgreementLists agreements;

    @Inject
    Renewals renewals;

    List<Answer> waiting(Frame frame, int most) {
        var answers = new ArrayList<Answer>();
        for (RenewalRow row : renewals.list(frame.today())) {
            if (row.standing() != RenewalRow.Standing.OFFERED && answers.size() < most) {
                answers.add(new Answer(
                        row.agreementId(),
                        row.homeId(),
                        row.home(),
                        row.signer(),
                        row.price().format(frame.locale()),
                        frame.brief(row.notice().latest()),
                        true,
                        row.standing() == RenewalRow.Standing.LATE,
                        frame.brief(row.lastDay())));
            }
        }
        agreements.page(AgreementState.OFFERED, frame.today(), 0, most).stream()
                .sorted(Comparator.comparing(row -> row.term().from()))
                .map(row -> new Answer(
                        row.agreementId(),
                        row.homeId(),
                        row.home(),
                        row.signer(),
                        row.price().format(frame.locale()),
                        frame.brief(row.term().from()),
                        false,
                        false,
                        ""))
                .forEach(answers::add);
        return answers;
    }
}
