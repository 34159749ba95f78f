package changeover.billing.notices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OutboxMailTest {

    @Inject
    ABusiness business;

    @Inject
    Outbox outbox;

    @Inject
    OutboxMail mail;

    @Inject
    Documents documents;

    @Inject
    DocumentsToMake toMake;

    @Test
    void without_a_server_mail_waits_and_is_seen() {
        UUID tenant = business.quebec();
        write(tenant, message("Adèle Fournier", "adele@example.com", List.of()));
        assertFalse(mail.hasServer());
        assertEquals(0, mail.sendPending(tenant, 50));
        business.in(tenant, () -> {
            assertEquals(1, outbox.countNotSent());
            assertEquals(
                    OutboxMessage.Standing.TO_SEND,
                    outbox.notSent(10).getFirst().standing());
        });
    }

    @Test
    void a_message_waits_for_its_papers_and_is_sent_once_with_them() throws Exception {
        UUID tenant = business.quebec();
        Wanted paper = Wanted.of(PaperKind.ESTIMATE, UUID.randomUUID());
        NewMessage message = message("Adèle Fournier", "adele@example.com", List.of(paper));
        business.in(tenant, () -> documents.order(List.of(paper)));
        write(tenant, message);
        write(tenant, message);
        try (GreenMailForTests server = new GreenMailForTests()) {
            assertEquals(0, mail.sendPending(tenant, 50));
            assertEquals(
                    OutboxMessage.Standing.WAITS_FOR_PAPERS,
                    business.in(tenant, () -> outbox.notSent(10)).getFirst().standing());
            toMake.makePending(tenant, 10);
            assertEquals(1, mail.sendPending(tenant, 50));
            assertEquals(0, mail.sendPending(tenant, 50));
            MimeMessage[] received = server.server().getReceivedMessages();
            assertEquals(1, received.length);
            assertEquals("Votre facture F-1 : 68,99 $", received[0].getSubject().replace('\u00a0', ' '));
            assertEquals(
                    "\"Adèle Fournier\" <adele@example.com>",
                    ((InternetAddress) received[0].getAllRecipients()[0]).toUnicodeString());
            assertEquals(
                    business.in(tenant, () -> business.one("select message_id from outbox")),
                    received[0].getMessageID());
            MimeMultipart parts = (MimeMultipart) received[0].getContent();
            assertEquals(
                    "Bonjour,\nvoici l’été.",
                    parts.getBodyPart(0)
                            .getContent()
                            .toString()
                            .replace("\r", "")
                            .strip());
            assertEquals("S-1.pdf", parts.getBodyPart(1).getFileName());
            assertEquals(
                    "application/pdf", parts.getBodyPart(1).getContentType().split(";")[0]);
        }
        business.in(tenant, () -> {
            assertEquals(0, outbox.countNotSent());
            assertNotNull(outbox.newest(0, 10).getFirst().sentAt());
        });
    }

    @Test
    void a_name_cannot_begin_another_header() throws Exception {
        UUID tenant = business.quebec();
        write(tenant, message("Eve\r\nBcc: all@example.com\r\n\r\n<script>\u202e", "eve@example.com", List.of()));
        try (GreenMailForTests server = new GreenMailForTests()) {
            assertEquals(1, mail.sendPending(tenant, 50));
            MimeMessage received = server.server().getReceivedMessages()[0];
            assertEquals(1, received.getAllRecipients().length);
            assertEquals(null, received.getHeader("Bcc"));
        }
    }

    @Test
    void an_address_that_is_none_becomes_a_letter() {
        UUID tenant = business.quebec();
        for (String address :
                new String[] {"a@b.example\r\nRCPT TO:<x@example.com>", "a b@example.com", "", "no", "é@x"}) {
            write(tenant, message("Somebody", address, List.of()));
        }
        business.in(tenant, () -> {
            assertEquals(0, outbox.countNotSent());
            assertEquals(5, outbox.countToPrint());
            List<UUID> ids = outbox.toPrint().stream().map(OutboxMessage::id).toList();
            assertEquals(5, outbox.printed(ids));
            assertEquals(0, outbox.printed(ids));
            assertEquals(0, outbox.countToPrint());
        });
    }

    @Test
    void a_refusing_server_is_asked_again_later_under_the_same_message_id() throws Exception {
        UUID tenant = business.quebec();
        write(tenant, message("Adèle Fournier", "adele@example.com", List.of()));
        try (ServerSocket refusing = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            Thread.startVirtualThread(() -> refuse(refusing));
            System.setProperty("changeover.mail.host", "127.0.0.1");
            System.setProperty("changeover.mail.port", String.valueOf(refusing.getLocalPort()));
            System.setProperty("changeover.mail.from", "papers@example.com");
            assertEquals(0, mail.sendPending(tenant, 50));
        } finally {
            System.clearProperty("changeover.mail.host");
        }
        OutboxMessage waiting = business.in(tenant, () -> outbox.notSent(10)).getFirst();
        assertEquals(OutboxMessage.Standing.TRIES_AGAIN, waiting.standing());
        assertEquals(1, waiting.attempts());
        assertTrue(waiting.lastError().contains("554"), waiting.lastError());
        String id = business.in(tenant, () -> business.one("select message_id from outbox"));
        try (GreenMailForTests server = new GreenMailForTests()) {
            assertEquals(0, mail.sendPending(tenant, 50));
            business.in(tenant, () -> outbox.tryAgain(List.of(waiting.id())));
            assertEquals(1, mail.sendPending(tenant, 50));
            assertEquals(id, server.server().getReceivedMessages()[0].getMessageID());
        }
    }

    private static void refuse(ServerSocket socket) {
        try (var client = socket.accept();
                var lines =
                        new BufferedReader(new InputStreamReader(client.getInputStream(), StandardCharsets.US_ASCII))) {
            var out = client.getOutputStream();
            out.write("554 no service today\r\n".getBytes(StandardCharsets.US_ASCII));
            out.flush();
            lines.readLine();
        } catch (IOException closed) {
            Thread.currentThread().interrupt();
        }
    }

    private void write(UUID tenant, NewMessage message) {
        business.in(tenant, () -> outbox.write(List.of(message)));
    }

    private static NewMessage message(String name, @Nullable String email, List<Wanted> papers) {
        return new NewMessage(
                "invoice",
                UUID.randomUUID(),
                1,
                null,
                new Recipient(UUID.randomUUID(), name, email, List.of("27, rue des Mélèzes"), "fr"),
                "Votre facture F-1\u00a0: 68,99\u00a0$",
                "Bonjour,\nvoici l’été.",
                papers);
    }
}
