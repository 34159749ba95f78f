package changeover.billing.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.InvoiceIssued;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Lines come once, each says what it may be and why, and nothing is booked without a yes. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BankLinesTest {

    static final LocalDate DAY = LocalDate.of(2026, 10, 1);
    static final Columns COLUMNS =
            new Columns(',', 0, 1, DayStyle.YEAR_MONTH_DAY, 3, null, false, List.of(2), null, null);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    Banks banks;

    @Inject
    BankFiles files;

    @Inject
    BankLines lines;

    @Inject
    Proposals proposals;

    @Inject
    BankBooking booking;

    @Inject
    AgroalDataSource datasource;

    private InvoiceIssued.Issued invoice(UUID customer, String net) {
        UUID draft = drafts.write(List.of(SomeDrafts.on(DAY, customer, business.home(customer, "QC"), net)))
                .getFirst();
        return invoices.issue(draft, DAY);
    }

    private BankFiles.Taken bring(String... rows) {
        UUID bank = banks.named("Harbour Bank");
        banks.map(bank, COLUMNS);
        return files.take(bank, String.join("\n", rows).getBytes(StandardCharsets.UTF_8));
    }

    private String proposed() {
        return proposals.waiting(50).entrySet().stream()
                .map(one -> one.getKey().amount().decimal() + " "
                        + one.getValue()
                                .map(proposal -> proposal.what() + " " + proposal.customer() + " " + proposal.why()
                                        + " " + proposal.sure())
                                .orElse("nothing"))
                .collect(Collectors.joining("\n"));
    }

    private void yes() {
        proposals
                .waiting(50)
                .forEach((line, proposal) -> proposal.ifPresent(one -> booking.accept(line.id(), one.shown())));
    }

    private long bad() {
        try (var connection = datasource.getConnection()) {
            return BankChecks.of(connection).bad();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    @Test
    void each_line_once_and_each_with_its_reason() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            UUID jo = business.customer("Jo Poé");
            String number = invoice(ida, "100.00").label();
            invoice(jo, "200.00");
            invoice(business.customer("Mara Quill"), "300.00");
            invoice(business.customer("Anselm Birk"), "400.00");
            String[] rows = {
                "2026-10-05,Virement " + number.replace("-", " ") + ",114.98",
                "2026-10-05,INTERAC JO POE,229.95",
                "2026-10-06,Depot,344.93",
                "2026-10-06,Virement Anselm Birk,100.00",
                "2026-10-06,Rebate,3.21"
            };
            assertEquals(new BankFiles.Taken(5, 0), bring(rows));
            assertEquals(new BankFiles.Taken(0, 5), bring(rows));
            assertEquals(new BankFiles.Taken(1, 2), bring(rows[3], rows[4], "2026-10-07,Fee,-4.00"));
            assertEquals("""
                    114.98 PAYMENT Ida Roe [NUMBER, AMOUNT] true
                    229.95 PAYMENT Jo Poé [NAME, AMOUNT] true
                    344.93 PAYMENT Mara Quill [AMOUNT, ONLY_ONE] false
                    100.00 PAYMENT Anselm Birk [NAME, LESS] false
                    3.21 nothing
                    -4.00 nothing""", proposed());
            assertEquals("1149.76", owed.all(DAY.plusDays(30)).open().decimal(), "nothing is booked without a yes");
            yes();
            assertEquals("359.90", owed.all(DAY.plusDays(30)).open().decimal());
            assertEquals("3.21 nothing\n-4.00 nothing", proposed());
            booking.dismiss(lines.waiting(5).getFirst().id(), "The bank's own");
            assertEquals(1, lines.waiting(5).size());
            assertEquals(0, bad());
        });
    }

    @Test
    void what_was_noted_by_hand_is_not_booked_again_and_what_comes_back_is_taken_back() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            invoice(ida, "100.00");
            payments.take(new NewPayment(
                    ida, DAY.plusDays(3), Way.CHEQUE, Money.of("114.98", "CAD"), "114", null, List.of()));
            bring("2026-10-06,Cheque 114,114.98", "2026-10-09,Retour 114 Ida Roe,-114.98");
            assertEquals(
                    "114.98 NOTED Ida Roe [AMOUNT, REFERENCE, ONLY_ONE] true",
                    proposed().lines().findFirst().orElse(""));
            BankLine in = lines.waiting(5).getFirst();
            booking.accept(in.id(), proposals.of(in).orElseThrow().shown());
            assertEquals("0.00", owed.all(DAY.plusDays(30)).open().decimal());
            assertEquals("-114.98 RETURNED Ida Roe [AMOUNT, REFERENCE, NAME] false", proposed());
            yes();
            assertEquals("114.98", owed.all(DAY.plusDays(30)).open().decimal());
            assertEquals(0, lines.waiting(5).size());
            assertEquals(0, bad());
        });
    }

    @Test
    void a_line_is_split_to_the_cent_and_taken_back_whole() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            UUID jo = business.customer("Jo Poe");
            var first = invoice(ida, "100.00");
            var second = invoice(jo, "200.00");
            bring("2026-10-05,Together,350.00");
            UUID line = lines.waiting(5).getFirst().id();
            Refused refused = assertThrows(
                    Refused.class,
                    () -> booking.split(
                            line,
                            List.of(new BankBooking.Share(
                                    ida, List.of(first.invoiceId()), Money.of("114.98", "CAD")))));
            assertEquals("bank.split-sum", refused.first().code());
            booking.split(
                    line,
                    List.of(
                            new BankBooking.Share(ida, List.of(first.invoiceId()), Money.of("114.98", "CAD")),
                            new BankBooking.Share(jo, List.of(second.invoiceId()), Money.of("229.95", "CAD")),
                            new BankBooking.Share(jo, List.of(), Money.of("5.07", "CAD"))));
            assertEquals(
                    "0.00 5.07",
                    owed.all(DAY.plusDays(30)).open().decimal() + " "
                            + owed.of(jo, DAY.plusDays(30)).credit().decimal());
            assertThrows(Refused.class, () -> booking.dismiss(line, "Once more"));
            booking.takeBack(line, "The wrong ones");
            assertTrue(lines.waits(line));
            LocalDate now = LocalDate.now(ZoneId.of("America/Toronto"));
            assertEquals("344.93", owed.all(now).open().decimal());
            booking.dismiss(line, "Nobody's");
            assertFalse(lines.waits(line));
            booking.takeBack(line, "Somebody's after all");
            assertTrue(lines.waits(line));
            assertEquals(0, bad());
        });
    }

    @Test
    void a_yes_to_what_has_changed_meanwhile_books_nothing() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            invoice(ida, "100.00");
            bring("2026-10-05,Ida Roe,114.98");
            BankLine line = lines.waiting(5).getFirst();
            String shown = proposals.of(line).orElseThrow().shown();
            payments.take(
                    new NewPayment(ida, DAY.plusDays(3), Way.CASH, Money.of("50.00", "CAD"), null, null, List.of()));
            Refused refused = assertThrows(Refused.class, () -> booking.accept(line.id(), shown));
            assertEquals("bank.changed", refused.first().code());
            assertTrue(lines.waits(line.id()));
        });
    }

    /** 114.98 in cash is 115.00 in coins: the line of 115.00 pays the document whole. */
    @Test
    void a_payment_is_booked_in_the_way_that_the_bank_says() {
        business.in(business.quebec(), () -> {
            UUID bank = banks.named("Harbour Bank");
            banks.map(bank, new Columns(',', 0, 1, DayStyle.YEAR_MONTH_DAY, 3, null, false, List.of(2), null, 4));
            String rows = "";
            for (String way : List.of("114.98,Chèque", "115.00,Comptant", "114.98,Autre")) {
                UUID customer = business.customer("Ida Roe");
                rows += "2026-10-05,Facture " + invoice(customer, "100.00").label() + "," + way + "\n";
            }
            files.take(bank, rows.getBytes(StandardCharsets.UTF_8));
            yes();
            assertEquals(
                    "[cash, cheque, transfer]",
                    lines.said(9).stream()
                            .flatMap(said -> payments.ofCustomer(said.customerId()).stream())
                            .map(payment -> payment.way().code())
                            .sorted()
                            .toList()
                            .toString());
            assertEquals("0.00", owed.all(DAY.plusDays(30)).open().decimal());
            assertEquals(0, bad());
        });
    }
}
