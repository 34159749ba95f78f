package changeover.deploy.demo;

import changeover.billing.payments.Deposits;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.Standing;
import changeover.billing.payments.Way;
import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.Examples;
import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a year leaves behind: a debt that was given up, one given up in part, and a deposit for work to come. */
@ApplicationScoped
public class DemoMoney {

    private static final int DAYS_LOST = 90;

    @Inject
    InvoiceLists lists;

    @Inject
    WriteOffs writeOffs;

    @Inject
    Deposits deposits;

    /** Inside the shop, on its last day. */
    void settle(Examples.Shop shop, LocalDate today) {
        boolean french = shop.language().equals("fr");
        List<InvoiceRow> late = lists.rows(InvoiceFilter.standing(Standing.LATE).page(0, 500), today).stream()
                .filter(row -> row.day().plusDays(DAYS_LOST).isBefore(today))
                .sorted(Comparator.comparing(InvoiceRow::day).thenComparing(InvoiceRow::id))
                .toList();
        if (late.size() > 2) {
            InvoiceRow lost = late.getFirst();
            writeOffs.giveUp(
                    lost.id(),
                    today.minusDays(9),
                    null,
                    french ? "Déménagé sans adresse, trois lettres revenues" : "Moved away, three letters came back");
            InvoiceRow half = late.get(1);
            writeOffs.giveUp(
                    half.id(),
                    today.minusDays(4),
                    half.open().fraction(1, 2),
                    french ? "La moitié, pour clore un désaccord" : "One half, to close a disagreement");
        }
        lists.rows(InvoiceFilter.standing(Standing.PAID).page(0, 50), today).stream()
                .filter(row -> row.homeId() != null)
                .findFirst()
                .ifPresent(row -> deposit(row.customerId(), row.homeId(), today, french));
    }

    private void deposit(UUID customer, @Nullable UUID home, LocalDate today, boolean french) {
        if (home != null) {
            deposits.take(new NewDeposit(
                    customer,
                    home,
                    null,
                    null,
                    today.minusDays(3),
                    Way.CARD,
                    Money.of("400.00", "CAD"),
                    null,
                    french ? "Remplacer le ventilateur de la thermopompe" : "Replace the heat pump’s fan"));
        }
    }
}
