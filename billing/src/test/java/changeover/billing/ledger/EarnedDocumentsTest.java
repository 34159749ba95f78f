package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.fees.FeeKind;
import changeover.billing.fees.Fees;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.ledger.EarnedDocuments.What;
import changeover.billing.ledger.EarnedOn.Days;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Returns;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The documents listed behind a figure are its sum, on every day of a random year. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EarnedDocumentsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    AYearOfMoney year;

    @Inject
    Earned earned;

    @Inject
    EarnedDocuments documents;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Fees fees;

    @Inject
    Payments payments;

    @Inject
    Returns returns;

    @Inject
    Journal journal;

    @Test
    void what_visits_earned_is_the_sum_of_its_documents_on_any_day() {
        business.in(business.quebec(), () -> {
            year.goesBy(20261130);
            LocalDate last = AYearOfMoney.FIRST.plusYears(1);
            for (LocalDate day = AYearOfMoney.FIRST.minusDays(1); !day.isAfter(last); day = day.plusDays(17)) {
                EarnedOn on = earned.on(day);
                for (Days days : Days.values()) {
                    assertEquals(
                            on.visits().in(days),
                            sum(days.from(day), day, What.VISITS, on.currency()),
                            days + " to " + day);
                }
            }
        });
    }

    private Money sum(LocalDate from, LocalDate until, What what, Currency currency) {
        return Money.sum(
                documents.between(from, until, what).stream()
                        .map(EarnedDocuments.Document::net)
                        .toList(),
                currency);
    }

    @Test
    void a_fee_is_earned_apart_from_work_as_the_journal_books_it() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            UUID work = drafts.write(List.of(SomeDrafts.on(DAY, customer, home, "100.00")))
                    .getFirst();
            invoices.issue(work, DAY);
            fees.set(FeeKind.RETURNED, "CA-QC", DAY, Money.of("20.00", "CAD"), "Agreement, clause 9");
            UUID cheque = payments.take(
                    new NewPayment(customer, DAY, Way.CHEQUE, Money.of("114.98", "CAD"), "14", null, List.of()));
            invoices.issue(returns.back(cheque, DAY, "No funds").orElseThrow(), DAY);
            EarnedOn on = earned.on(DAY);
            assertEquals(
                    "100.00 20.00 120.00",
                    on.visits().ever().decimal() + " " + on.fees().month().decimal() + " "
                            + on.together().year().decimal());
            assertEquals(on.fees().ever(), sum(DAY, DAY, What.FEES, on.currency()));
            Map<String, Money> booked = Journal.moved(journal.of(new Period(DAY, DAY))).stream()
                    .collect(Collectors.toMap(
                            Journal.Moved::role, one -> one.credit().minus(one.debit())));
            // the line is of a plan that no agreement carries, which is earned as it is invoiced
            assertEquals(on.visits().ever(), booked.get(AccountRole.REVENUE_VISIT.code()));
            assertEquals(on.fees().ever(), booked.get(AccountRole.FEES.code()));
        });
    }
}
