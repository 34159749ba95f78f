package changeover.web.office;

import changeover.billing.bank.BankLines;
import changeover.billing.bank.Proposal;
import changeover.web.session.Frame;
import java.util.List;
import java.util.Locale;

/** What a line of the bank may be, and what became of one, as the page says it. */
final class BankInWords {

    private BankInWords() {}

    static BankPages.May may(Proposal proposal, Frame frame) {
        Proposal.Group group = proposal.group();
        return new BankPages.May(
                proposal.what().name().toLowerCase(Locale.ROOT),
                proposal.customer(),
                String.join(
                        ", ",
                        proposal.invoices().stream().map(Proposal.Target::label).toList()),
                proposal.paymentId().size(),
                group == null ? "" : group.way().wording().in(frame.locale()) + ", " + frame.brief(group.day()),
                proposal.why().stream()
                        .map(why -> why.name().toLowerCase(Locale.ROOT))
                        .toList(),
                proposal.sure(),
                proposal.shown());
    }

    static BankPages.Done done(BankLines.Said row, Frame frame) {
        boolean dismissed = row.how().equals("dismissed");
        return new BankPages.Done(
                row.line().id(),
                frame.brief(row.line().day()),
                row.line().said(),
                row.line().amount().format(frame.locale()),
                row.how(),
                dismissed
                        ? List.of()
                        : List.of(row.why().toLowerCase(Locale.ROOT).split(" ")),
                dismissed ? row.why() : "",
                row.customerId(),
                row.customer(),
                row.payments());
    }
}
