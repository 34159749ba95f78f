package changeover.billing.notices;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;

/** A real mail server on a port of its own; the settings of the installation point to it while it is open. */
final class GreenMailForTests implements AutoCloseable {

    private final GreenMail server;

    GreenMailForTests() {
        server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        server.start();
        System.setProperty("changeover.mail.host", "127.0.0.1");
        System.setProperty(
                "changeover.mail.port", String.valueOf(server.getSmtp().getPort()));
        System.setProperty("changeover.mail.from", "papers@example.com");
    }

    GreenMail server() {
        return server;
    }

    @Override
    public void close() {
        System.clearProperty("changeover.mail.host");
        System.clearProperty("changeover.mail.port");
        System.clearProperty("changeover.mail.from");
        server.stop();
    }
}
