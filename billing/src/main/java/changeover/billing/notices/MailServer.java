package changeover.billing.notices;

import io.vertx.core.Vertx;
import io.vertx.ext.mail.MailClient;
import io.vertx.ext.mail.MailConfig;
import io.vertx.ext.mail.StartTLSOptions;
import java.time.Duration;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.jspecify.annotations.Nullable;

/**
 * The mail server that the installation was given; without one, mail waits.
 *
 * @param patience how long one message may take before it counts as failed
 * @param from the address every message leaves from; answers go to the business's own address
 */
record MailServer(
        String host,
        int port,
        @Nullable String user,
        @Nullable String password,
        @Nullable String from,
        boolean tls,
        StartTLSOptions startTls,
        Duration patience) {

    private static final int SUBMISSION = 587;

    /** Settings {@code changeover.mail.host, port, user, password, from, tls, start-tls, patience}; empty without a host. */
    static Optional<MailServer> of(Config config) {
        return config.getOptionalValue("changeover.mail.host", String.class)
                .filter(host -> !host.isBlank())
                .map(host -> new MailServer(
                        host.strip(),
                        config.getOptionalValue("changeover.mail.port", Integer.class)
                                .orElse(SUBMISSION),
                        config.getOptionalValue("changeover.mail.user", String.class)
                                .orElse(null),
                        config.getOptionalValue("changeover.mail.password", String.class)
                                .orElse(null),
                        config.getOptionalValue("changeover.mail.from", String.class)
                                .orElse(null),
                        config.getOptionalValue("changeover.mail.tls", Boolean.class)
                                .orElse(false),
                        config.getOptionalValue("changeover.mail.start-tls", StartTLSOptions.class)
                                .orElse(StartTLSOptions.OPTIONAL),
                        config.getOptionalValue("changeover.mail.patience", Duration.class)
                                .orElse(Duration.ofSeconds(30))));
    }

    MailClient client(Vertx vertx) {
        MailConfig config = new MailConfig()
                .setHostname(host)
                .setPort(port)
                .setSsl(tls)
                .setStarttls(tls ? StartTLSOptions.DISABLED : startTls)
                .setKeepAlive(true)
                .setMaxPoolSize(1)
                .setUserAgent("changeover")
                .setOwnHostname("changeover.mail");
        config.setConnectTimeout(10_000);
        if (user != null) {
            config.setUsername(user);
            config.setPassword(password == null ? "" : password);
        }
        return MailClient.create(vertx, config);
    }
}
