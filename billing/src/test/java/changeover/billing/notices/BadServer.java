package changeover.billing.notices;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;

/** A mail server on its worst days: refuses, hangs up in the middle, or takes a message and hangs up before saying so. */
final class BadServer implements AutoCloseable {

    /** What it does to one message. */
    enum Mood {
        GOOD,
        REFUSES_THE_SENDER,
        REFUSES_THE_RECIPIENT,
        REFUSES_FOR_NOW,
        HANGS_UP_AT_ONCE,
        HANGS_UP_IN_THE_MIDDLE,
        TAKES_IT_AND_HANGS_UP
    }

    private final ServerSocket socket;
    private final Random random;
    private final List<String> taken = new CopyOnWriteArrayList<>();
    private volatile boolean good;

    BadServer(long seed) throws IOException {
        random = new Random(seed);
        socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        System.setProperty("changeover.mail.host", "127.0.0.1");
        System.setProperty("changeover.mail.port", String.valueOf(socket.getLocalPort()));
        System.setProperty("changeover.mail.from", "papers@example.com");
        System.setProperty("changeover.mail.patience", "PT0.4S");
        Thread.startVirtualThread(this::listen);
    }

    /** Message-IDs in the order in which it took them, whether it said so or not. */
    List<String> taken() {
        return taken;
    }

    void recovers() {
        good = true;
    }

    private void listen() {
        while (!socket.isClosed()) {
            try {
                Socket client = socket.accept();
                Thread.startVirtualThread(() -> talk(client));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void talk(Socket client) {
        try (client;
                var lines = new BufferedReader(
                        new InputStreamReader(client.getInputStream(), StandardCharsets.ISO_8859_1))) {
            OutputStream out = client.getOutputStream();
            Mood mood = mood();
            if (mood == Mood.HANGS_UP_AT_ONCE) {
                return;
            }
            say(out, "220 here");
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String word = line.split("[ :]", 2)[0].toUpperCase(java.util.Locale.ROOT);
                switch (word) {
                    case "EHLO", "HELO", "RSET" -> say(out, "250 here");
                    case "MAIL" -> say(out, mood == Mood.REFUSES_THE_SENDER ? "550 not you" : "250 well");
                    case "RCPT" -> say(out, mood == Mood.REFUSES_THE_RECIPIENT ? "452 full" : "250 well");
                    case "DATA" -> {
                        if (mood == Mood.HANGS_UP_IN_THE_MIDDLE) {
                            say(out, "354 go on");
                            lines.readLine();
                            return;
                        }
                        if (mood == Mood.REFUSES_FOR_NOW) {
                            say(out, "451 later");
                        } else {
                            say(out, "354 go on");
                            taken.add(message(lines));
                            if (mood == Mood.TAKES_IT_AND_HANGS_UP) {
                                return;
                            }
                            say(out, "250 taken");
                        }
                        mood = mood();
                    }
                    case "QUIT" -> {
                        say(out, "221 bye");
                        return;
                    }
                    default -> say(out, "502 no such word");
                }
            }
        } catch (IOException gone) {
            Thread.yield();
        }
    }

    private static String message(BufferedReader lines) throws IOException {
        String id = "";
        for (String line = lines.readLine(); line != null && !line.equals("."); line = lines.readLine()) {
            if (line.regionMatches(true, 0, "Message-ID:", 0, 11)) {
                id = line.substring(11).strip();
            }
        }
        return id;
    }

    private synchronized Mood mood() {
        return good ? Mood.GOOD : Mood.values()[random.nextInt(Mood.values().length)];
    }

    private static void say(OutputStream out, String line) throws IOException {
        out.write((line + "\r\n").getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    @Override
    public void close() throws IOException {
        System.clearProperty("changeover.mail.host");
        System.clearProperty("changeover.mail.port");
        System.clearProperty("changeover.mail.from");
        System.clearProperty("changeover.mail.patience");
        socket.close();
    }
}
