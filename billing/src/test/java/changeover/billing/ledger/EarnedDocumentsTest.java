package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.ledger.EarnedOn.Days;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The documents listed behind a figure are its sum, on every day of a random year. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EarnedDocumentsTest {

    @Inject
    ABusiness business;

    @Inject
    AYearOfMoney year;

    @Inject
    Earned earned;

    @Inject
    EarnedDocuments documents;

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
                            Money.sum(
                                    documents.between(days.from(day), day).stream()
                                            .map(EarnedDocuments.Document::net)
                                            .toList(),
                                    on.currency()),
                            days + " to " + day);
                }
            }
        });
    }
}
