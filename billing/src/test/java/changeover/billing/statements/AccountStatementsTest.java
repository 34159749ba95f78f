package changeover.billing.statements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.Outbox;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A month's statements in one go: opening, documents, payments, closing, tied to what is owed. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AccountStatementsTest {

    static final LocalDate FIRST = LocalDate.of(2026, 5, 1);
    static final LocalDate LAST = LocalDate.of(2026, 5, 31);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    AccountStatements statements;

    @Inject
    DocumentsToMake papers;

    @Inject
    Documents documents;

    @Inject
    Outbox outbox;

    private String invoice(UUID customer, LocalDate day, String net) {
        UUID draft = drafts.write(List.of(SomeDrafts.on(day, customer, business.home(customer, "QC"), net)))
                .getFirst();
        return invoices.issue(draft, day).label();
    }

    @Test
    void everybody_who_moved_or_owes_gets_one_that_ties_to_the_documents() {
        UUID tenant = business.quebec();
        UUID ida = business.in(tenant, () -> business.customer("Ida Roe", "en", "each"));
        String label = business.in(tenant, () -> {
            UUID jo = business.customer("Jo Poe");
            UUID mara = business.customer("Mara Quill");
            invoice(mara, FIRST.minusDays(20), "10.00");
            payments.take(new NewPayment(
                    mara, FIRST.minusDays(10), Way.CARD, Money.of("11.50", "CAD"), null, null, List.of()));
            invoice(jo, FIRST.minusDays(20), "20.00");
            invoice(ida, FIRST.minusDays(20), "100.00");
            String number = invoice(ida, FIRST.plusDays(3), "200.00");
            payments.take(new NewPayment(
                    ida, FIRST.plusDays(9), Way.CHEQUE, Money.of("114.98", "CAD"), "114", null, List.of()));
            assertEquals(Set.of(ida, jo), statements.whom(FIRST, LAST).keySet());
            assertEquals(2, statements.send(FIRST, LAST, Set.of()));
            assertEquals(0, statements.send(FIRST, LAST, Set.of()), "once a day");
            assertThrows(Refused.class, () -> statements.send(LAST, FIRST, Set.of()));
            return number;
        });
        papers.makePending(tenant, 20);
        business.in(tenant, () -> {
            AccountStatements.Made made = statements.of(ida).getFirst();
            assertEquals("229.95", made.closing().decimal());
            byte[] pdf = documents
                    .newest(PaperKind.STATEMENT, made.id())
                    .orElseThrow()
                    .bytes();
            assertTrue(pdf.length > 5_000);
            assertEquals(
                    "11498 34493 -11498 22995 " + label,
                    business.one(
                            "select concat_ws(' ', opening_minor, opening_minor + (lines -> 0 ->> 'amount')::bigint,"
                                    + " lines -> 1 ->> 'amount', closing_minor, lines -> 0 ->> 'said') from account_statement"
                                    + " where customer_id = '" + ida + "'"));
            assertEquals(
                    1,
                    outbox.to(ida).stream()
                            .filter(one -> one.kind().equals("statement"))
                            .count());
        });
    }
}
