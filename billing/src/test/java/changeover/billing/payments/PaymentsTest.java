package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Money in part, in full, too much, sent back; and what is owed by age. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaymentsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    static final Currency CAD = Currency.getInstance("CAD");

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    Owed owed;

    @Inject
    Statements statements;

    @Inject
    InvoiceLists lists;

    private UUID draft(UUID customer, String... nets) {
        return drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), nets)))
                .getFirst();
    }

    private UUID invoice(UUID customer, LocalDate day, String... nets) {
        UUID id = draft(customer, nets);
        invoices.issue(id, day);
        return id;
    }

    private UUID pay(UUID customer, LocalDate day, Way way, String amount, NewPayment.Part... parts) {
        return payments.take(new NewPayment(customer, day, way, Money.of(amount, "CAD"), null, null, List.of(parts)));
    }

    private String stands(UUID customer, LocalDate day) {
        OwedBy by = owed.of(customer, day);
        return by.open().decimal() + " credit " + by.credit().decimal();
    }

    @Test
    void a_payment_in_part_then_in_full_then_too_much() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = invoice(customer, DAY, "249.00");
            pay(customer, DAY, Way.CARD, "100.00");
            assertEquals("186.29 credit 0.00", stands(customer, DAY));
            pay(customer, DAY.plusDays(3), Way.TRANSFER, "200.00");
            assertEquals("186.29 credit 0.00", stands(customer, DAY));
            assertEquals("0.00 credit 13.71", stands(customer, DAY.plusDays(3)));
            assertEquals(
                    "286.29",
                    owed.item(id, DAY.plusDays(3)).orElseThrow().paid().decimal());
            assertThrows(
                    Refused.class,
                    () -> refunds.give(
                            new NewRefund(customer, DAY.plusDays(4), Way.CARD, Money.of("13.72", "CAD"), null, null)));
            refunds.give(new NewRefund(customer, DAY.plusDays(4), Way.CARD, Money.of("13.71", "CAD"), null, null));
            assertEquals("0.00 credit 0.00", stands(customer, DAY.plusDays(4)));
        });
    }

    @Test
    void cash_rounded_to_five_cents_pays_the_document() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            invoice(customer, DAY, "249.00");
            UUID id = pay(customer, DAY, Way.CASH, "286.30");
            assertEquals("0.00 credit 0.00", stands(customer, DAY));
            assertEquals("286.29", payments.of(id).orElseThrow().amount().decimal());
            assertEquals("286.30", payments.of(id).orElseThrow().tendered().decimal());
        });
    }

    @Test
    void money_given_back_of_a_cheque_that_did_not_hold_is_owed_until_it_comes() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            invoice(customer, DAY, "249.00");
            UUID cheque = pay(customer, DAY, Way.CHEQUE, "300.00");
            refunds.give(new NewRefund(customer, DAY.plusDays(1), Way.TRANSFER, Money.of("13.71", "CAD"), null, null));
            payments.undo(cheque, Undoing.How.BOUNCED, DAY.plusDays(5), "No funds");
            assertEquals("286.29 credit 0.00", stands(customer, DAY.plusDays(5)));
            OwedBy all = owed.all(DAY.plusDays(5));
            assertEquals(
                    "13.71 of 300.00",
                    all.beyond().decimal() + " of " + all.all().decimal());
            pay(customer, DAY.plusDays(6), Way.CARD, "300.00");
            assertEquals("0.00 credit 0.00", stands(customer, DAY.plusDays(6)));
            assertEquals(List.of(), owed.byCustomer(DAY.plusDays(6)));
        });
    }

    @Test
    void a_cheque_sent_back_opens_what_it_paid() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            invoice(customer, DAY, "249.00");
            UUID cheque = pay(customer, DAY, Way.CHEQUE, "286.29");
            payments.undo(cheque, Undoing.How.BOUNCED, DAY.plusDays(5), "No funds");
            assertEquals("0.00 credit 0.00", stands(customer, DAY.plusDays(4)));
            assertEquals("286.29 credit 0.00", stands(customer, DAY.plusDays(5)));
            assertThrows(Refused.class, () -> payments.undo(cheque, Undoing.How.BOUNCED, DAY.plusDays(6), "Again"));
            assertEquals(
                    "before 0.00 0.00, invoice 286.29 286.29, payment -286.29 0.00, returned 286.29 286.29",
                    statements.of(customer, DAY, DAY.plusDays(30)).stream()
                            .map(row -> row.what() + " " + row.amount().decimal() + " "
                                    + row.balance().decimal())
                            .collect(Collectors.joining(", ")));
            assertEquals(
                    "before 286.29",
                    statements.of(customer, DAY.plusDays(6), DAY.plusDays(30)).stream()
                            .map(row -> row.what() + " " + row.balance().decimal())
                            .collect(Collectors.joining(", ")));
        });
    }

    @Test
    void money_paid_ahead_decides_the_day_of_the_tax() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "NS");
            UUID id = drafts.write(List.of(SomeDrafts.on(LocalDate.of(2025, 3, 20), customer, home, "249.00")))
                    .getFirst();
            pay(
                    customer,
                    LocalDate.of(2025, 3, 31),
                    Way.CARD,
                    "50.00",
                    new NewPayment.Part(id, Money.of("50.00", "CAD")));
            invoices.issue(id, LocalDate.of(2025, 4, 2));
            assertEquals("286.35", invoices.view(id).orElseThrow().total().decimal(), "15 % of the day paid");
            assertEquals("236.35 credit 0.00", stands(customer, LocalDate.of(2025, 4, 2)));
        });
    }

    @Test
    void a_credit_on_a_paid_invoice_pays_the_next_one() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID first = invoice(customer, DAY, "249.00");
            pay(customer, DAY, Way.CARD, "286.29");
            UUID credit = credits.inPart(
                    first, DAY, Map.of(1, Money.of("156.22", "CAD")), new Wording("Moved away.", "Déménagement."));
            invoices.issue(credit, DAY);
            assertEquals("0.00 credit 179.62", stands(customer, DAY));
            invoice(customer, DAY, "100.00");
            assertEquals("114.98 credit 179.62", stands(customer, DAY));
            assertEquals("114.98", payments.settle(customer, DAY).decimal());
            assertEquals("0.00 credit 64.64", stands(customer, DAY));
            assertEquals("0.00", payments.settle(customer, DAY).decimal());
        });
    }

    @Test
    void what_is_owed_by_age() {
        business.in(business.quebec(), () -> {
            LocalDate today = DAY.plusDays(130);
            UUID early = business.customer("Ida Roe");
            UUID late = business.customer("Jo Poe");
            invoice(early, DAY, "10.00");
            invoice(early, DAY.plusDays(30), "20.00");
            invoice(early, DAY.plusDays(50), "30.00");
            invoice(late, DAY.plusDays(80), "40.00");
            invoice(late, DAY.plusDays(120), "50.00");
            OwedBy all = owed.all(today);
            assertEquals(
                    "2 5 172.47 57.49 45.99 34.49 23.00 11.50 4",
                    all.customers() + " " + all.documents() + " " + all.open().decimal() + " "
                            + all.notDue().decimal() + " " + all.late30().decimal() + " "
                            + all.late60().decimal() + " " + all.late90().decimal() + " "
                            + all.older().decimal() + " " + all.lateDocuments());
            assertEquals(
                    List.of("Ida Roe", "Jo Poe"),
                    owed.byCustomer(today).stream().map(OwedBy::customer).toList());
            assertEquals(
                    4, lists.rows(InvoiceFilter.standing(Standing.LATE), today).size());
            assertEquals(
                    "57.49",
                    Objects.requireNonNull(lists.sums(today, CAD).get(Standing.OPEN))
                            .amount()
                            .decimal());
            InvoiceLists.Listed third =
                    lists.listed(InvoiceFilter.standing(Standing.LATE).page(2, 1), today);
            assertEquals(
                    lists.sums(today, CAD).get(Standing.LATE), new InvoiceLists.Sum(third.documents(), third.amount()));
            assertEquals(3, lists.rows(InvoiceFilter.ofCustomer(early), today).size());
            UUID waiting = draft(late, "5.00");
            assertEquals(List.of(waiting), lists.ready(today));
            assertEquals(0, owed.all(DAY.minusDays(1)).documents(), "before the first document nothing was owed");
        });
    }

    @Test
    void a_document_of_somebody_else_is_refused() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID other = business.customer("Jo Poe");
            UUID id = invoice(other, DAY, "249.00");
            Refused refused = assertThrows(
                    Refused.class,
                    () -> pay(customer, DAY, Way.CARD, "1.00", new NewPayment.Part(id, Money.of("1.00", "CAD"))));
            assertEquals("payment.not-theirs", refused.first().code());
            assertTrue(payments.ofCustomer(customer).isEmpty());
        });
    }
}
