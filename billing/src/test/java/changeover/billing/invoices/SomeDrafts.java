package changeover.billing.invoices;

import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Drafts of a plan for one home, for tests: one line an amount. */
public final class SomeDrafts {

    public static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    private SomeDrafts() {}

    public static Draft plan(UUID customer, UUID home, String... amounts) {
        return on(DAY, customer, home, amounts);
    }

    public static Draft on(LocalDate day, UUID customer, UUID home, String... amounts) {
        List<DraftLine> lines =
                Arrays.stream(amounts).map(amount -> line(home, amount)).toList();
        return draft(DocumentKind.PLAN, day, customer, home, null, null, lines);
    }

    /** A visit's, charged beside any plan; of a fee when that is its work. */
    public static Draft visit(LocalDate day, UUID customer, UUID home, Work work, String amount) {
        Money net = Money.of(amount, "CAD");
        DraftLine line = line(
                home,
                null,
                day,
                "labour",
                work,
                ContractForm.SEPARATE,
                new Wording("Work on site", "Travail sur place"),
                net);
        return draft(DocumentKind.VISIT, day, customer, home, null, null, List.of(line));
    }

    /** An agreement's, one of as many as its number. */
    public static Draft instalment(
            LocalDate day, UUID customer, UUID home, UUID agreement, int instalment, String amount) {
        return draft(
                DocumentKind.PLAN,
                day,
                customer,
                home,
                agreement,
                instalment,
                List.of(line(home, agreement, day, amount)));
    }

    private static Draft draft(
            DocumentKind kind,
            LocalDate day,
            UUID customer,
            UUID home,
            @Nullable UUID agreement,
            @Nullable Integer instalment,
            List<DraftLine> lines) {
        return new Draft(
                kind,
                null,
                customer,
                home,
                agreement,
                null,
                null,
                instalment,
                instalment,
                "fr",
                lines.getFirst().net().currency(),
                day,
                false,
                null,
                30,
                null,
                lines);
    }

    static DraftLine line(UUID home, String amount) {
        return line(home, null, DAY, amount);
    }

    private static DraftLine line(UUID home, @Nullable UUID agreement, LocalDate day, String amount) {
        return line(
                home,
                agreement,
                day,
                "plan",
                Work.MAINTENANCE,
                ContractForm.PLAN,
                new Wording("Plan Comfort", "Formule Confort"),
                Money.of(amount, "CAD"));
    }

    private static DraftLine line(
            UUID home,
            @Nullable UUID agreement,
            LocalDate day,
            String kind,
            Work work,
            ContractForm form,
            Wording words,
            Money net) {
        return new DraftLine(
                home,
                agreement,
                null,
                null,
                day,
                kind,
                null,
                null,
                Covered.BILLABLE,
                work,
                form,
                words,
                new Wording("Agreement no. 7.", "Entente nº 7."),
                BigDecimal.ONE,
                "C62",
                net,
                BigDecimal.ZERO,
                Money.zero(net.currency()),
                net);
    }
}
