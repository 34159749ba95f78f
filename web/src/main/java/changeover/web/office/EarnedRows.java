package changeover.web.office;

import changeover.billing.ledger.EarnedOn.Plan;
import changeover.billing.ledger.EarnedOn.Span;
import changeover.billing.payments.Age;
import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.OpenedBefore;
import changeover.billing.payments.OwedBy;
import changeover.contracts.money.Money;
import changeover.web.session.Frame;
import java.util.List;
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

    static EarnedPages.Line line(Span span, Frame frame) {
        return new EarnedPages.Line(
                EarnedPages.said(span.month(), frame),
                EarnedPages.said(span.year(), frame),
                EarnedPages.said(span.ever(), frame));
    }

    static OpenItemsPages.Item item(OpenByAge.Item one, Frame frame) {
        return new OpenItemsPages.Item(
                one.id(),
                one.label(),
                one.customerId(),
                one.customer(),
                frame.brief(one.dueDay()),
                EarnedPages.said(one.open(), frame));
    }

    static OpenItemsPages.Old old(OpenedBefore.Item one, Frame frame) {
        return new OpenItemsPages.Old(
                frame.brief(one.since()),
                one.customerId(),
                one.customer(),
                one.words(),
                EarnedPages.said(one.open(), frame));
    }

    static List<EarnedPages.Open> ages(OwedBy by, Frame frame) {
        return List.of(
                open(Age.NOT_DUE, by.notDue(), frame),
                open(Age.LATE_30, by.late30(), frame),
                open(Age.LATE_60, by.late60(), frame),
                open(Age.LATE_90, by.late90(), frame),
                open(Age.OLDER, by.older(), frame));
    }

    private static EarnedPages.Open open(Age age, Money amount, Frame frame) {
        return new EarnedPages.Open(age.code(), EarnedPages.said(amount, frame));
    }

    private static String some(Money money, Frame frame) {
        return money.isZero() ? "" : money.format(frame.locale());
    }
}
