package changeover.web.office;

import changeover.billing.ledger.EarnedOn.Plan;
import changeover.contracts.money.Money;
import changeover.web.session.Frame;
import java.util.Locale;

/** An agreement's earned and prepaid money as a row; what is nought stays blank where it would only tire the eye. */
final class EarnedRows {

    private EarnedRows() {}

    static EarnedPages.Row row(Plan plan, Frame frame) {
        return new EarnedPages.Row(
                plan.agreementId(),
                plan.number(),
                plan.customer(),
                plan.customerId(),
                plan.home(),
                plan.homeId(),
                plan.plan().in(frame.locale()),
                frame.brief(plan.term().from()) + " – "
                        + frame.brief(plan.term().last()),
                plan.ended() == null ? "" : frame.brief(plan.ended()),
                plan.basis().name().toLowerCase(Locale.ROOT),
                plan.invoiced().format(frame.locale()),
                some(plan.givenBack(), frame),
                plan.earned().ever().format(frame.locale()),
                some(plan.prepaid(), frame),
                some(plan.ahead(), frame));
    }

    private static String some(Money money, Frame frame) {
        return money.isZero() ? "" : money.format(frame.locale());
    }
}
