package changeover.billing.invoices;

import changeover.contracts.agreements.AgreementSold;
import changeover.contracts.agreements.AgreementsTakenOver;
import changeover.contracts.agreements.SaleChannel;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** What is still to be invoiced of a price that was agreed elsewhere is asked for at once, from the day of the take-over on. */
@ApplicationScoped
class WhenAgreementsTakenOver {

    @Inject
    PlansToAsk plans;

    @Inject
    Drafts drafts;

    void write(@Observes AgreementsTakenOver event) {
        drafts.write(plans
                .of(event.agreements().stream().map(one -> rest(event, one)).toList())
                .stream()
                .flatMap(plan -> plan.drafts().stream())
                .toList());
    }

    private static AgreementSold.Sold rest(AgreementsTakenOver event, AgreementsTakenOver.TakenOver one) {
        return new AgreementSold.Sold(
                one.agreementId(),
                one.homeId(),
                one.payerId(),
                one.termFrom(),
                one.termUntil(),
                one.asked(),
                1,
                event.day(),
                SaleChannel.COUNTER,
                false,
                one.language());
    }
}
