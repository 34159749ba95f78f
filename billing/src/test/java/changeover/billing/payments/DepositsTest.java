package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.documents.Document;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
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
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Money taken before the work: kept, applied once, given back, and never below nought; answers written by hand. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DepositsTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

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
    Deposits deposits;

    @Inject
    Owed owed;

    @Inject
    DocumentsToMake papers;

    @Inject
    BooksHold books;

    private record Case(UUID customer, UUID home) {}

    private Case somebody() {
        UUID customer = business.customer("Ida Roe");
        return new Case(customer, business.home(customer, "QC"));
    }

    private UUID invoice(Case one, LocalDate day, String net) {
        UUID id = drafts.write(List.of(SomeDrafts.plan(one.customer(), one.home(), net)))
                .getFirst();
        invoices.issue(id, day);
        return id;
    }

    private UUID deposit(Case one, String amount) {
        return deposits.take(new NewDeposit(
                one.customer(),
                one.home(),
                null,
                null,
                DAY,
                Way.CARD,
                money(amount),
                "4410",
                "Remplacer la bouilloire"));
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }

    private String left(UUID deposit) {
        Deposit found = deposits.of(deposit).orElseThrow();
        return found.left().decimal() + " applied " + found.applied().decimal() + " back "
                + found.back().decimal();
    }

    private String stands(UUID customer, LocalDate day) {
        OwedBy by = owed.of(customer, day);
        return by.open().decimal() + " credit " + by.credit().decimal();
    }

    private static void check(org.junit.jupiter.api.function.Executable verb, String expected) {
        assertEquals(expected, assertThrows(Refused.class, verb).first().code());
    }

    @Test
    void it_pays_nothing_by_itself_and_an_invoice_when_it_is_applied() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID id = deposit(one, "100.00");
            UUID invoice = invoice(one, DAY.plusDays(1), "249.00");
            payments.settle(one.customer(), DAY.plusDays(1));
            assertEquals("286.29 credit 100.00", stands(one.customer(), DAY.plusDays(1)));
            check(() -> deposits.apply(id, invoice, DAY.plusDays(2), money("100.01")), "deposit.beyond-left");
            assertEquals(
                    "60.00",
                    deposits.apply(id, invoice, DAY.plusDays(2), money("60.00")).decimal());
            assertEquals(
                    "40.00", deposits.apply(id, invoice, DAY.plusDays(3), null).decimal());
            assertEquals("0.00 applied 100.00 back 0.00", left(id));
            check(() -> deposits.apply(id, invoice, DAY.plusDays(3), null), "payment.nothing");
            check(() -> deposits.apply(id, invoice, DAY.plusDays(3), money("1.00")), "deposit.beyond-left");
            assertEquals("186.29 credit 0.00", stands(one.customer(), DAY.plusDays(3)));
            assertEquals("286.29 credit 100.00", stands(one.customer(), DAY.plusDays(1)));
            books.check();
        });
    }

    @Test
    void what_is_left_goes_back_and_is_no_credit_of_another_kind() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID id = deposit(one, "100.00");
            check(() -> refund(one, "0.01"), "payment.refund-beyond-credit");
            check(() -> deposits.giveBack(id, DAY.plusDays(1), Way.CARD, money("100.01"), null), "deposit.beyond-left");
            UUID back = deposits.giveBack(id, DAY.plusDays(1), Way.CARD, money("70.00"), null);
            assertEquals("30.00 applied 0.00 back 70.00", left(id));
            assertEquals("0.00 credit 30.00", stands(one.customer(), DAY.plusDays(1)));
            books.check();
            payments.undo(back, Undoing.How.MISTAKE, DAY.plusDays(2), "wrong card");
            assertEquals("100.00 applied 0.00 back 0.00", left(id));
            UUID invoice = invoice(one, DAY.plusDays(3), "10.00");
            assertEquals(
                    "11.50", deposits.apply(id, invoice, DAY.plusDays(3), null).decimal());
            invoices.issue(credits.inFull(invoice, DAY.plusDays(4), new Wording("why", "why")), DAY.plusDays(4));
            payments.settle(one.customer(), DAY.plusDays(4));
            assertEquals("100.00 applied 0.00 back 0.00", left(id));
            books.check();
        });
    }

    private void refund(Case one, String amount) {
        refunds.give(new NewRefund(one.customer(), DAY.plusDays(1), Way.CARD, money(amount), null, null));
    }

    @Test
    void a_deposit_that_the_bank_sent_back_pays_nothing_any_more() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID id = deposit(one, "100.00");
            UUID invoice = invoice(one, DAY.plusDays(1), "249.00");
            deposits.apply(id, invoice, DAY.plusDays(1), money("60.00"));
            UUID payment = deposits.of(id).orElseThrow().paymentId();
            payments.undo(payment, Undoing.How.BOUNCED, DAY.plusDays(2), "no funds");
            assertEquals("286.29 credit 0.00", stands(one.customer(), DAY.plusDays(2)));
            check(() -> deposits.apply(id, invoice, DAY.plusDays(3), money("1.00")), "deposit.beyond-left");
            books.check();
        });
    }

    @Test
    void wrong_days_strangers_and_nothing_are_refused() {
        business.in(business.quebec(), () -> {
            Case one = somebody();
            UUID id = deposit(one, "100.00");
            UUID strangers = invoice(somebody(), DAY.plusDays(1), "10.00");
            UUID own = invoice(one, DAY.plusDays(1), "10.00");
            check(() -> deposits.apply(id, strangers, DAY.plusDays(1), null), "payment.not-theirs");
            check(() -> deposits.apply(id, own, DAY.minusDays(1), null), "deposit.before-its-day");
            check(() -> deposits.apply(id, own, DAY.plusDays(1), money("11.51")), "deposit.beyond-open");
            check(() -> deposits.apply(UUID.randomUUID(), own, DAY, null), "deposit.not-found");
            check(() -> deposit(one, "0.00"), "payment.nothing");
            check(() -> take(one, " ", DAY), "deposit.words");
            check(() -> take(one, "Boiler", LocalDate.of(2226, 1, 1)), "payment.day-to-come");
        });
    }

    private void take(Case one, String words, LocalDate day) {
        deposits.take(
                new NewDeposit(one.customer(), one.home(), null, null, day, Way.CARD, money("10.00"), null, words));
    }

    /** The receipt is in the customer's language, names the work and the money, and no tax. */
    @Test
    void a_deposit_has_its_receipt() throws IOException {
        UUID tenant = business.quebec();
        UUID id = business.in(tenant, () -> deposit(somebody(), "100.00"));
        Document paper = papers.newest(tenant, PaperKind.RECEIPT, id).orElseThrow();
        String text = text(paper.bytes());
        assertTrue(text.contains("Reçu d’acompte"), text);
        assertTrue(text.contains("Remplacer la bouilloire"), text);
        assertTrue(text.contains("100,00"), text);
        assertTrue(text.contains("Ida Roe"), text);
        assertTrue(!text.contains("TVQ"), text);
    }

    /** In Quebec the French of a paper comes first (Charter of the French language, s. 57, from memory). */
    @Test
    void a_receipt_for_an_english_reader_is_in_french_first() throws IOException {
        UUID tenant = business.quebec();
        UUID id = business.in(tenant, () -> {
            UUID customer = business.customer("Mara Quill", "en", "each");
            return deposit(new Case(customer, business.home(customer, "QC")), "100.00");
        });
        String text =
                text(papers.newest(tenant, PaperKind.RECEIPT, id).orElseThrow().bytes());
        assertTrue(text.contains("Reçu d’acompte") && text.contains("$100.00"), text);
        assertTrue(text.indexOf("100,00") < text.indexOf("$100.00"), text);
    }

    private static String text(byte @Nullable [] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }
}
