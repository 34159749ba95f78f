package changeover.billing.notices;

import changeover.billing.documents.Document;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.ext.mail.MailAttachment;
import io.vertx.ext.mail.MailClient;
import io.vertx.ext.mail.MailMessage;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.microprofile.config.ConfigProvider;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * Sends what the outbox holds. A message is taken for a few minutes, handed to the mail server, and marked sent when the
 * server has said yes; when we die between the two it goes again under the same Message-ID, never under another.
 */
@ApplicationScoped
public class OutboxMail {

    private static final Logger LOG = Logger.getLogger(OutboxMail.class);

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    MailTurns turns;

    @Inject
    LastLook look;

    @Inject
    AnsweredOnThePage page;

    @Inject
    Vertx vertx;

    /** What a message says as it leaves, and the papers that go with it. */
    private record Leaving(String body, List<Document> papers) {}

    /** @param sender the business's name, and the address that answers go to */
    private record Sender(String name, @Nullable String address) {}

    /** Whether the installation has a mail server; without one, pages say that mail waits. */
    public boolean hasServer() {
        return MailServer.of(ConfigProvider.getConfig()).isPresent();
    }

    /** Sends up to so many messages of a business, the oldest first, and says how many the server took. */
    public int sendPending(UUID tenant, int limit) {
        Optional<MailServer> server = MailServer.of(ConfigProvider.getConfig());
        if (server.isEmpty()) {
            return 0;
        }
        List<MailTurns.Turn> taken = current.run(tenant, CurrentTenant.NOBODY, () -> turns.take(limit));
        if (taken.isEmpty()) {
            return 0;
        }
        Sender sender = current.run(tenant, CurrentTenant.NOBODY, this::sender);
        int sent = 0;
        Line line = new Line(server.get(), vertx);
        try {
            for (MailTurns.Turn turn : taken) {
                sent += send(tenant, line, sender, turn) ? 1 : 0;
            }
        } finally {
            line.close();
        }
        return sent;
    }

    /** The connection to the server; after a failure the next message gets a new one. */
    private static final class Line {
        private final MailServer server;
        private final Vertx vertx;
        private @Nullable MailClient client;

        Line(MailServer server, Vertx vertx) {
            this.server = server;
            this.vertx = vertx;
        }

        void say(MailMessage message) throws ExecutionException, InterruptedException, TimeoutException {
            MailClient open = client == null ? server.client(vertx) : client;
            client = open;
            boolean said = false;
            try {
                open.sendMail(message)
                        .toCompletionStage()
                        .toCompletableFuture()
                        .get(server.patience().toMillis(), TimeUnit.MILLISECONDS);
                said = true;
            } finally {
                if (!said) {
                    close();
                }
            }
        }

        void close() {
            if (client != null) {
                client.close();
                client = null;
            }
        }
    }

    private boolean send(UUID tenant, Line line, Sender sender, MailTurns.Turn turn) {
        try {
            Optional<Leaving> leaving = current.run(
                    tenant,
                    CurrentTenant.NOBODY,
                    () -> look.mayLeave(turn.id())
                            ? Optional.of(new Leaving(page.body(turn), turns.papers(turn.id())))
                            : Optional.empty());
            if (leaving.isEmpty()) {
                return false;
            }
            line.say(message(line.server, sender, turn, leaving.get()));
            current.run(tenant, CurrentTenant.NOBODY, () -> turns.sent(turn));
            return true;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        } catch (ExecutionException | CompletionException | TimeoutException | IllegalArgumentException refused) {
            String reason = reason(refused);
            LOG.warnf("mail %s not sent: %s", turn.messageId(), reason);
            current.run(tenant, CurrentTenant.NOBODY, () -> turns.failed(turn, reason));
            return false;
        }
    }

    private static MailMessage message(MailServer server, Sender sender, MailTurns.Turn turn, Leaving leaving) {
        String from = server.from() != null ? server.from() : sender.address();
        if (from == null) {
            throw new IllegalArgumentException(
                    "no address to send from: set changeover.mail.from or the business's own");
        }
        MailMessage message = new MailMessage()
                .setFrom(from)
                .setTo(turn.toAddress())
                .addHeader("From", MailName.header(sender.name(), from))
                .addHeader("To", MailName.header(turn.toName(), turn.toAddress()))
                .setSubject(turn.subject())
                .setText(leaving.body())
                .addHeader("Message-ID", turn.messageId())
                .addHeader("Content-Language", turn.language())
                .addHeader("Auto-Submitted", "auto-generated");
        if (sender.address() != null) {
            message.addHeader("Reply-To", sender.address());
        }
        List<MailAttachment> attached = new ArrayList<>();
        for (Document paper : leaving.papers()) {
            attached.add(MailAttachment.create()
                    .setName(paper.fileName())
                    .setContentType(paper.mediaType())
                    .setDisposition("attachment")
                    .setData(Buffer.buffer(paper.bytes())));
        }
        return message.setAttachment(attached);
    }

    private Sender sender() {
        Business business = businesses.current();
        BusinessProfile profile = businesses.profile();
        String address = profile.facts().email();
        boolean usable = new Recipient(null, "", address, List.of(), "en").hasMail();
        return new Sender(business.name(), usable ? address : null);
    }

    private static String reason(Exception failure) {
        Throwable cause = failure;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        String said = cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
        return OneLine.of(failure instanceof TimeoutException ? "no answer in time" : said);
    }
}
