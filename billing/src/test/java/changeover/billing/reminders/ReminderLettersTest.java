package changeover.billing.reminders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** The letters themselves: written once however many write, and answered in the way that their reader can. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReminderLettersTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Ladders ladders;

    @Inject
    Reminders reminders;

    @Inject
    Outbox outbox;

    @Inject
    Today today;

    /** Issued so long ago that it is so many days late today; its terms are thirty days. */
    private UUID late(UUID customer, int days, String net) {
        LocalDate issued = today.day().minusDays(30L + days);
        UUID id = drafts.write(List.of(SomeDrafts.on(issued, customer, business.home(customer, "QC"), net)))
                .getFirst();
        invoices.issue(id, issued);
        return id;
    }

    private List<OutboxMessage> written(UUID customer) {
        return outbox.to(customer).stream()
                .filter(one -> one.kind().equals("reminder"))
                .toList();
    }

    @Test
    void two_who_write_at_once_write_each_letter_once() throws Exception {
        UUID tenant = business.quebec();
        UUID ida = business.in(tenant, () -> {
            Step.usual().forEach(ladders::keep);
            UUID customer = business.customer("Ida Roe", "en", "each");
            late(customer, 25, "100.00");
            return customer;
        });
        int written = 0;
        try (var threads = Executors.newFixedThreadPool(4)) {
            Callable<Integer> one = () -> business.in(tenant, () -> reminders.write(List.of(ida)));
            for (var each : threads.invokeAll(Collections.nCopies(4, one))) {
                written += each.get();
            }
        }
        assertEquals(1, written);
        business.in(tenant, () -> assertEquals(1, written(ida).size()));
    }

    @Test
    void a_message_is_answered_by_a_message_and_a_letter_by_telephone_or_in_writing() {
        business.in(business.quebec(), () -> {
            Step.usual().forEach(ladders::keep);
            business.execute("update business_profile set phone = '555-0129'");
            UUID ida = business.customer("Ida Roe", "en", "each");
            business.execute("update customer set email = 'ida@example.com' where id = '" + ida + "'");
            UUID jo = business.customer("Jo Poe");
            late(ida, 9, "20.00");
            late(jo, 9, "20.00");
            reminders.write();
            assertTrue(
                    written(ida).getFirst().body().contains("A question? Answer this message."),
                    written(ida).getFirst().body());
            String paper = written(jo).getFirst().body();
            assertTrue(paper.contains("Une question? Appelez-nous au 555-0129."), paper);
            assertTrue(!paper.contains("ce message"), paper);
        });
        business.in(business.quebec(), () -> {
            Step.usual().forEach(ladders::keep);
            UUID mo = business.customer("Mo Tarn");
            late(mo, 9, "20.00");
            reminders.write();
            String paper = written(mo).getFirst().body();
            assertTrue(paper.contains("Écrivez-nous à l’adresse en haut de cette lettre."), paper);
        });
    }
}
