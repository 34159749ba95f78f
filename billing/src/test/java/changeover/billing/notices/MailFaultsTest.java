package changeover.billing.notices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MailFaultsTest {

    private static final int MESSAGES = Boolean.getBoolean("changeover.deep") ? 1000 : 40;

    @Inject
    ABusiness business;

    @Inject
    Outbox outbox;

    @Inject
    OutboxMail mail;

    @Test
    void whatever_the_server_does_no_message_is_lost_and_none_goes_under_two_ids() throws Exception {
        long seed = Long.getLong("changeover.seed", 20261125L);
        System.out.println("MailFaultsTest seed " + seed);
        UUID tenant = business.quebec();
        Set<String> written = new HashSet<>();
        business.in(tenant, () -> {
            List<NewMessage> messages = new ArrayList<>();
            for (int number = 0; number < MESSAGES; number++) {
                messages.add(new NewMessage(
                        "notice",
                        UUID.randomUUID(),
                        1,
                        null,
                        new Recipient(null, "Ida Roe", "ida" + number + "@example.com", List.of(), "en"),
                        "Number " + number,
                        "Words.",
                        List.of()));
            }
            outbox.write(messages);
        });
        try (BadServer server = new BadServer(seed)) {
            for (int round = 0; round < 200 && business.in(tenant, () -> outbox.countNotSent()) > 0; round++) {
                if (round == 12) {
                    server.recovers();
                }
                mail.sendPending(tenant, 20);
                business.in(
                        tenant,
                        () -> outbox.tryAgain(outbox.notSent(MESSAGES).stream()
                                .map(OutboxMessage::id)
                                .toList()));
            }
            assertEquals(0, business.in(tenant, () -> outbox.countNotSent()));
            for (String id : business.in(tenant, () -> business.one("select string_agg(message_id, ' ') from outbox"))
                    .split(" ")) {
                written.add(id);
            }
            assertEquals(MESSAGES, written.size());
            assertEquals(written, new HashSet<>(server.taken()));
            assertTrue(server.taken().size() > MESSAGES, "some were taken twice, under one id each");
        }
    }

    @Test
    void two_senders_at_once_send_each_message_once() throws Exception {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            List<NewMessage> messages = new ArrayList<>();
            for (int number = 0; number < 40; number++) {
                messages.add(new NewMessage(
                        "notice",
                        UUID.randomUUID(),
                        1,
                        null,
                        new Recipient(null, "Ida Roe", "ida" + number + "@example.com", List.of(), "en"),
                        "Number " + number,
                        "Words.",
                        List.of()));
            }
            outbox.write(messages);
        });
        try (GreenMailForTests server = new GreenMailForTests()) {
            var others = new AtomicInteger();
            Thread other = Thread.ofVirtual().start(() -> others.set(mail.sendPending(tenant, 30)));
            int mine = mail.sendPending(tenant, 30);
            other.join();
            assertEquals(40, mine + others.get() + mail.sendPending(tenant, 40));
            assertEquals(40, server.server().getReceivedMessages().length);
            assertEquals(0, business.in(tenant, () -> outbox.countNotSent()));
        }
    }
}
