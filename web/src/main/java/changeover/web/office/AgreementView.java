package changeover.web.office;

import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.contracts.agreements.Acceptance;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.AgreementDetails;
import changeover.contracts.agreements.AgreementState;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Ending;
import changeover.contracts.agreements.PlanChanges;
import changeover.contracts.agreements.TakenOverAgreements;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.web.session.Frame;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Puts one agreement into words for its page. */
final class AgreementView {

    private final Agreement agreement;
    private final Frame frame;
    private final Locale locale;

    AgreementView(Agreement agreement, Frame frame) {
        this.agreement = agreement;
        this.frame = frame;
        this.locale = frame.locale();
    }

    AgreementPage.View of(
            Agreements agreements,
            PlanChanges changes,
            TakenOverAgreements takenOver,
            AgreementDetails details,
            Homes homes,
            Customers customers,
            InvoiceLists invoices) {
        AgreementState state = agreements.state(agreement, frame.today());
        var acceptance = agreements.acceptance(agreement.id());
        var ending = agreements.ending(agreement.id());
        return new AgreementPage.View(
                agreement.id(),
                agreement.number(),
                agreement.homeId(),
                homes.get(agreement.homeId()).map(Home::line).orElse(""),
                customers.get(agreement.signerId()).map(Customer::name).orElse(""),
                customers.get(agreement.payerId()).map(Customer::name).orElse(""),
                agreement.payerId(),
                agreement.planName().in(locale),
                frame.inWords(agreement.term().from()) + " – "
                        + frame.inWords(agreement.term().last()),
                agreement.price().format(locale),
                agreement.instalments(),
                agreement.visits(),
                frame.inWords(agreement.validUntil()),
                state == AgreementState.OFFERED,
                Set.of(AgreementState.ACCEPTED, AgreementState.IN_FORCE).contains(state),
                acceptance.map(Acceptance::day).map(frame::inWords).orElse(""),
                acceptance.map(Acceptance::byName).orElse(""),
                acceptance.map(yes -> yes.channel().wording().in(locale)).orElse(""),
                ending.map(Ending::day).map(frame::inWords).orElse(""),
                ending.map(this::why).orElse(""),
                details.machines().stream().map(this::machine).toList(),
                details.parts().stream()
                        .map(part -> part.part().in(locale) + " × "
                                + part.quantity().stripTrailingZeros().toPlainString())
                        .toList(),
                documents(invoices),
                changes.insteadOf(agreement.id()).map(this::other).orElse(null),
                changes.taken(agreement.id())
                        .or(() -> changes.offered(agreement.id(), frame.today()))
                        .map(this::other)
                        .orElse(null),
                takenOver.known(agreement.id()).map(this::before).orElse(null));
    }

    private AgreementPage.Before before(TakenOverAgreements.Known known) {
        Money paid = known.paid();
        LocalDate last = known.lastVisit();
        return new AgreementPage.Before(
                frame.inWords(known.day()),
                paid == null ? "" : paid.format(locale),
                known.visitsDone() == null ? "" : String.valueOf(known.visitsDone()),
                last == null ? "" : frame.inWords(last));
    }

    private AgreementPage.Other other(Agreement one) {
        return new AgreementPage.Other(one.id(), one.number(), one.planName().in(locale));
    }

    /** The chosen reason before the free words. */
    private String why(Ending ending) {
        return ending.cause()
                .map(cause -> cause.wording().in(locale) + ", " + ending.why())
                .orElse(ending.why());
    }

    private List<AgreementPage.Document> documents(InvoiceLists invoices) {
        return invoices.rows(InvoiceFilter.ofAgreement(agreement.id()), frame.today()).stream()
                .map(row -> new AgreementPage.Document(
                        row.id(),
                        row.label() == null ? "" : row.label(),
                        frame.brief(row.day()),
                        row.amount().format(locale)))
                .toList();
    }

    private AgreementPage.Machine machine(AgreementDetails.Machine machine) {
        String name = machine.name() == null ? "" : machine.name();
        return new AgreementPage.Machine(
                name.isEmpty() && machine.kind() != null ? machine.kind().in(locale) : name,
                machine.promises().stream()
                        .map(promised -> new AgreementPage.Promised(
                                promised.task().in(locale),
                                promised.often().in(locale),
                                promised.who() == Who.HOUSEHOLD,
                                promised.minutes()))
                        .toList());
    }
}
