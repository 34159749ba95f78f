package changeover.billing.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** One line of the bank for several payments: all of one way and day, or all that were noted together from one list. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaymentsTogetherTest {

    private static final LocalDate DAY = BankLinesTest.DAY;

    @Inject
    ABusiness business;

    @Inject
    Payments payments;

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
    BooksHold books;

    /** Noted in a transaction of their own, as a list is. */
    private void noted(UUID tenant, int count, Way way, LocalDate day, String amount) {
        business.in(tenant, () -> {
            for (int at = 0; at < count; at++) {
                UUID customer = business.customer("Ida Roe " + at);
                payments.take(new NewPayment(customer, day, way, Money.of(amount, "CAD"), null, null, List.of()));
            }
        });
    }

    private void bring(UUID tenant, String... rows) {
        business.in(tenant, () -> {
            UUID bank = banks.named("Harbour Bank");
            banks.map(bank, BankLinesTest.COLUMNS);
            files.take(bank, String.join("\n", rows).getBytes(StandardCharsets.UTF_8));
        });
    }

    private String proposed(UUID tenant) {
        return business.in(
                tenant,
                () -> proposals.waiting(50).entrySet().stream()
                        .map(one -> one.getKey().amount().decimal() + " "
                                + one.getValue()
                                        .map(proposal -> proposal.what() + " "
                                                + proposal.paymentId().size() + " " + proposal.sure())
                                        .orElse("nothing"))
                        .collect(Collectors.joining(", ")));
    }

    private void yes(UUID tenant) {
        business.in(
                tenant,
                () -> proposals
                        .waiting(50)
                        .forEach(
                                (line, proposal) -> proposal.ifPresent(one -> booking.accept(line.id(), one.shown()))));
    }

    /** 100 × 20.75 = 2,075.00. */
    @Test
    void a_hundred_instalments_are_one_line_with_a_yes_and_may_be_taken_back() {
        UUID tenant = business.quebec();
        noted(tenant, 100, Way.DEBIT, DAY, "20.75");
        bring(tenant, DAY.plusDays(2) + ",Debits,2075.00");
        assertEquals("2075.00 TOGETHER 100 false", proposed(tenant));
        yes(tenant);
        assertEquals("", proposed(tenant));
        business.in(tenant, () -> {
            books.check();
            assertEquals("100", business.one("select count(*) from bank_line_use where how = 'noted'"));
            assertEquals("100", business.one("select count(*) from payment"), "nothing is booked twice");
            BankLines.Said said = lines.said(9).getFirst();
            assertEquals("noted 100 null", said.how() + " " + said.payments() + " " + said.customerId());
            assertEquals(1, lines.said(9).size());
            booking.takeBack(said.line().id(), "Another line");
            books.check();
        });
        assertEquals("2075.00 TOGETHER 100 false", proposed(tenant));
    }

    /** A day with two lists of debits: 3 × 10.00 and 2 × 10.00; and three cheques beside them. */
    @Test
    void one_list_of_a_day_is_found_beside_another_and_cheques_apart() {
        UUID tenant = business.quebec();
        noted(tenant, 3, Way.DEBIT, DAY, "10.00");
        noted(tenant, 2, Way.DEBIT, DAY, "10.00");
        noted(tenant, 3, Way.CHEQUE, DAY.minusDays(1), "7.05");
        bring(
                tenant,
                DAY + ",Debits,30.00",
                DAY + ",Debits again,20.00",
                DAY + ",Cheques,21.15",
                DAY + ",Nothing of ours,22.00");
        assertEquals(
                "30.00 TOGETHER 3 false, 20.00 TOGETHER 2 false, 21.15 TOGETHER 3 false, 22.00 nothing",
                proposed(tenant));
        yes(tenant);
        assertEquals("22.00 nothing", proposed(tenant));
        business.in(tenant, () -> books.check());
    }

    @Test
    void all_of_a_day_are_one_line_though_they_were_noted_one_by_one() {
        UUID tenant = business.quebec();
        noted(tenant, 1, Way.CARD, DAY, "114.98");
        noted(tenant, 1, Way.CARD, DAY, "57.49");
        noted(tenant, 1, Way.CARD, DAY.minusDays(30), "1.00");
        bring(tenant, DAY.plusDays(1) + ",Terminal,172.47");
        assertEquals("172.47 TOGETHER 2 false", proposed(tenant));
    }

    /** Two days come to the same amount: the nearer one, and of two as near none. */
    @Test
    void of_two_days_the_nearer_one_is_proposed() {
        UUID tenant = business.quebec();
        noted(tenant, 2, Way.CHEQUE, DAY, "10.00");
        noted(tenant, 2, Way.CHEQUE, DAY.plusDays(4), "10.00");
        bring(tenant, DAY.plusDays(1) + ",Deposit,20.00", DAY.plusDays(2) + ",Deposit,20.00");
        assertEquals("20.00 TOGETHER 2 false, 20.00 nothing", proposed(tenant));
    }

    /** A payment came back since it was shown: it is another line now. */
    @Test
    void a_yes_is_to_the_payments_that_were_shown() {
        UUID tenant = business.quebec();
        noted(tenant, 2, Way.CHEQUE, DAY, "10.00");
        bring(tenant, DAY + ",Deposit,20.00");
        UUID line = business.in(tenant, () -> lines.waiting(1).getFirst().id());
        String shown = business.in(
                tenant,
                () -> proposals.of(lines.one(line).orElseThrow()).orElseThrow().shown());
        noted(tenant, 1, Way.CHEQUE, DAY, "10.00");
        business.in(
                tenant,
                () -> assertEquals(
                        shown,
                        proposals
                                .of(lines.one(line).orElseThrow())
                                .orElseThrow()
                                .shown(),
                        "the list of two is still one sum"));
        assertEquals(
                "bank.changed",
                assertThrows(
                                Refused.class,
                                () -> business.in(tenant, () -> booking.accept(line, shown.replace("2", "3"))))
                        .first()
                        .code());
    }
}
