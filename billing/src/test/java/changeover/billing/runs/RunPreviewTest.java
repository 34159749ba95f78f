package changeover.billing.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.runs.Foreseeable.Kind;
import changeover.billing.tax.Work;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a run would issue is said by kind and document, and what is odd about it before anybody begins. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RunPreviewTest {

    private static final LocalDate DAY = SomeDrafts.DAY;
    private static final LocalDate BEFORE = DAY.minusDays(40);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    RunPreviews previews;

    @Test
    void what_is_odd_is_named_and_the_kinds_are_together_the_whole() {
        RunPreview preview = business.in(business.quebec(), () -> {
            UUID usual = business.customer("Ida Roe");
            UUID home = business.home(usual, "QC");
            UUID other = business.customer("Basil Fenn");
            UUID second = business.home(other, "QC");
            invoices.issue(
                    drafts.write(List.of(
                            SomeDrafts.visit(BEFORE, usual, home, Work.REPAIR, "80.00"),
                            SomeDrafts.visit(BEFORE.plusDays(1), usual, home, Work.REPAIR, "100.00"),
                            SomeDrafts.visit(BEFORE.plusDays(2), usual, home, Work.REPAIR, "900.00"))),
                    BEFORE.plusDays(2));
            drafts.write(List.of(
                    SomeDrafts.plan(usual, home, "249.00", "10.00"),
                    SomeDrafts.visit(DAY.minusDays(3), usual, home, Work.REPAIR, "300.00"),
                    SomeDrafts.visit(DAY.minusDays(2), usual, home, Work.REPAIR, "300.01"),
                    SomeDrafts.visit(DAY.minusDays(1), other, second, Work.REPAIR, "5000.00"),
                    SomeDrafts.visit(DAY.minusDays(1), other, second, Work.FEE, "45.00"),
                    SomeDrafts.visit(DAY, other, second, Work.REPAIR, "60.00"),
                    SomeDrafts.visit(DAY, other, second, Work.MAINTENANCE, "70.00"),
                    SomeDrafts.plan(other, second, "1.00", "0.00"),
                    SomeDrafts.plan(other, second, "0.00")));
            return previews.on(DAY);
        });
        assertEquals(
                "PLAN 2 VISIT 5 FEE 1",
                preview.kinds().stream()
                        .map(one -> one.kind() + " " + one.drafts())
                        .collect(Collectors.joining(" ")));
        Currency currency = preview.totals().getFirst().currency();
        assertEquals(
                preview.totals().getFirst(),
                Money.sum(
                        preview.kinds().stream()
                                .map(one -> one.totals().getFirst())
                                .toList(),
                        currency));
        assertEquals(
                List.of("300.01 ABOVE_CUSTOMER 100.00", "60.00 TWICE_A_DAY", "70.00 TWICE_A_DAY", "1.00 AT_NOUGHT"),
                preview.odd().stream().map(RunPreviewTest::odd).sorted().toList().stream()
                        .sorted((one, two) -> order(one) - order(two))
                        .toList());
        assertEquals(1, preview.nothing());
        assertEquals(2, preview.of(Kind.PLAN).size());
        RunPreview.Planned plan = preview.of(Kind.PLAN).stream()
                .filter(one -> one.draft().customer().equals("Ida Roe"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "Plan Comfort 1 297.79",
                plan.draft().what().en() + " " + plan.draft().more() + " "
                        + plan.amount().decimal());
    }

    private static int order(String odd) {
        return List.of("300.01", "60.00", "70.00", "1.00").indexOf(odd.split(" ")[0]);
    }

    private static String odd(RunPreview.Planned one) {
        String subtotal = List.of("300.01", "60.00", "70.00", "1.00").stream()
                .filter(amount -> withTax(amount).equals(one.amount().decimal()))
                .findFirst()
                .orElse(one.amount().decimal());
        return subtotal + " "
                + one.draft().odd().stream()
                        .map(odd -> odd.why()
                                + (odd.usual() == null ? "" : " " + odd.usual().decimal()))
                        .collect(Collectors.joining(" "));
    }

    /** Quebec's two taxes, each on the amount before tax. */
    private static String withTax(String amount) {
        Money net = Money.of(amount, "CAD");
        return net.plus(net.percent(new java.math.BigDecimal("5")))
                .plus(net.percent(new java.math.BigDecimal("9.975")))
                .decimal();
    }
}
