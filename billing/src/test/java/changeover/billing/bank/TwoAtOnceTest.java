package changeover.billing.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.NewRefund;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** Several people press the same button at one moment: one of them moves the money, the others are told why not. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TwoAtOnceTest {

    private static final int PEOPLE = 6;
    private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
    private static final Money ALL = Money.of("114.98", "CAD");
    private static final Columns COLUMNS =
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
    Refunds refunds;

    @Inject
    Deposits deposits;

    @Inject
    WriteOffs writeOffs;

    @Inject
    Owed owed;

    @Inject
    Banks banks;

    @Inject
    BankFiles files;

    @Inject
    Proposals proposals;

    @Inject
    BankBooking booking;

    @Inject
    BooksHold books;

    private UUID invoice(UUID customer) {
        UUID draft = drafts.write(List.of(SomeDrafts.on(DAY, customer, business.home(customer, "QC"), "100.00")))
                .getFirst();
        return invoices.issue(draft, DAY).invoiceId();
    }

    private UUID pay(UUID customer) {
        return payments.take(new NewPayment(customer, DAY, Way.TRANSFER, ALL, null, null, List.of()));
    }

    /** How many of those who did it at once got it done. */
    private int at(UUID tenant, Runnable deed) throws Exception {
        int done = 0;
        try (var threads = Executors.newFixedThreadPool(PEOPLE)) {
            Callable<Boolean> one = () -> {
                try {
                    business.in(tenant, deed);
                    return true;
                } catch (Refused refused) {
                    return false;
                }
            };
            for (var each : threads.invokeAll(Collections.nCopies(PEOPLE, one))) {
                done += each.get() ? 1 : 0;
            }
        }
        business.in(tenant, books::check);
        return done;
    }

    @Test
    void a_credit_goes_back_once() throws Exception {
        UUID tenant = business.quebec();
        UUID ida = business.in(tenant, () -> business.customer("Ida Roe"));
        business.in(tenant, () -> pay(ida));
        assertEquals(1, at(tenant, () -> refunds.give(new NewRefund(ida, DAY, Way.CARD, ALL, null, null))));
    }

    @Test
    void a_deposit_pays_once() throws Exception {
        UUID tenant = business.quebec();
        UUID ida = business.in(tenant, () -> business.customer("Ida Roe"));
        UUID first = business.in(tenant, () -> invoice(ida));
        UUID second = business.in(tenant, () -> invoice(ida));
        UUID home = business.in(tenant, () -> business.home(ida, "QC"));
        UUID kept = business.in(
                tenant, () -> deposits.take(new NewDeposit(ida, home, null, null, DAY, Way.CARD, ALL, null, "Boiler")));
        assertEquals(1, at(tenant, () -> {
            UUID one = Thread.currentThread().threadId() % 2 == 0 ? first : second;
            deposits.apply(kept, one, DAY, ALL);
        }));
    }

    /** The one who gives up and the one who is paid: nothing is settled twice. */
    @Test
    void a_debt_is_given_up_or_paid() throws Exception {
        UUID tenant = business.quebec();
        UUID ida = business.in(tenant, () -> business.customer("Ida Roe"));
        UUID lost = business.in(tenant, () -> invoice(ida));
        at(tenant, () -> {
            if (Thread.currentThread().threadId() % 2 == 0) {
                writeOffs.giveUp(lost, DAY, ALL, "Moved away");
            } else {
                pay(ida);
            }
        });
        assertEquals(
                "0",
                business.in(tenant, () -> business.one("select coalesce(sum(amount_minor), 0) from write_off")),
                "the money that came pays it, whoever was first");
    }

    @Test
    void a_payment_is_undone_once() throws Exception {
        UUID tenant = business.quebec();
        UUID ida = business.in(tenant, () -> business.customer("Ida Roe"));
        UUID paid = business.in(tenant, () -> pay(ida));
        assertEquals(1, at(tenant, () -> payments.undo(paid, Undoing.How.BOUNCED, DAY, "No funds")));
    }

    @Test
    void a_line_of_the_bank_is_booked_once() throws Exception {
        UUID tenant = business.quebec();
        String label = business.in(tenant, () -> {
            UUID ida = business.customer("Ida Roe");
            UUID draft = drafts.write(List.of(SomeDrafts.on(DAY, ida, business.home(ida, "QC"), "100.00")))
                    .getFirst();
            return invoices.issue(draft, DAY).label();
        });
        business.in(tenant, () -> {
            UUID bank = banks.named("Harbour Bank");
            banks.map(bank, COLUMNS);
            files.take(bank, ("2026-10-05,Ida Roe " + label + ",114.98").getBytes(StandardCharsets.UTF_8));
        });
        UUID line = business.in(
                tenant, () -> proposals.waiting(5).keySet().iterator().next().id());
        String shown = business.in(
                tenant,
                () -> proposals
                        .waiting(5)
                        .values()
                        .iterator()
                        .next()
                        .orElseThrow()
                        .shown());
        assertEquals(1, at(tenant, () -> booking.accept(line, shown)));
        assertEquals("1", business.in(tenant, () -> business.one("select count(*) from payment")));
    }

    @Test
    void a_line_comes_once_out_of_several_files_at_once() throws Exception {
        UUID tenant = business.quebec();
        UUID bank = business.in(tenant, () -> {
            UUID named = banks.named("Harbour Bank");
            banks.map(named, COLUMNS);
            return named;
        });
        byte[] file = "2026-10-05,Fee,-1.00\n2026-10-05,Fee,-1.00\n".getBytes(StandardCharsets.UTF_8);
        assertEquals(PEOPLE, at(tenant, () -> files.take(bank, file)));
        assertEquals("2", business.in(tenant, () -> business.one("select count(*) from bank_line")));
    }
}
