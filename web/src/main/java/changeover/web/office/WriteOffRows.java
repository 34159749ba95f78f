package changeover.web.office;

import changeover.billing.writeoffs.WriteOff;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** What was given up and taken back, in words. */
@ApplicationScoped
class WriteOffRows {

    /**
     * A movement.
     *
     * @param back it opens a debt again
     * @param standing something of it may still be taken back
     */
    public record Row(
            UUID id,
            UUID invoiceId,
            String label,
            UUID customerId,
            String customer,
            String day,
            String why,
            String who,
            String amount,
            String tax,
            String lost,
            boolean back,
            boolean standing) {}

    @Inject
    People people;

    List<Row> of(List<WriteOff> given, Frame frame) {
        return given.stream().map(one -> row(one, frame)).toList();
    }

    private Row row(WriteOff one, Frame frame) {
        UUID by = one.by();
        return new Row(
                one.id(),
                one.invoiceId(),
                one.label(),
                one.customerId(),
                one.customer(),
                frame.brief(one.day()),
                why(one, frame),
                by == null || one.because() != null
                        ? ""
                        : people.of(by).map(Membership::name).orElse(""),
                said(one.amount(), frame),
                said(one.tax(), frame),
                said(one.lost(), frame),
                one.isTakenBack(),
                one.left().isPositive());
    }

    private static String why(WriteOff one, Frame frame) {
        GivenUpWords words = Bundles.of(GivenUpWords.class, frame.locale());
        WriteOff.Because because = one.because();
        if (because == null) {
            return one.why() == null ? "" : one.why();
        }
        return switch (because) {
            case PAID -> words.because_paid();
            case CREDITED -> words.because_credited();
        };
    }

    static String said(Money money, Frame frame) {
        return money.format(frame.locale());
    }
}
