package changeover.deploy.story;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A whole installation in a folder of the build, made by the same commands as anybody's. */
final class Installed implements AutoCloseable {
    private static final Path ROOT = Path.of(System.getProperty("changeover.root", ".."))
            .toAbsolutePath()
            .normalize();

    private final Path data;
    private final Process launcher;
    private final String url;

    private Installed(Path data, Process launcher, String url) {
        this.data = data;
        this.launcher = launcher;
        this.url = url;
    }

    /** Starts one and returns when it says that it is ready. */
    static Installed start(Path folder, String... options) {
        try {
            Path data = folder.toAbsolutePath();
            Files.createDirectories(data.getParent());
            Path said = data.resolveSibling(data.getFileName() + ".out");
            List<String> words = command("start", data);
            words.addAll(List.of("--port", Integer.toString(freePort())));
            words.addAll(List.of(options));
            Process launcher = builder(words)
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            while (ready(said).isEmpty() && !launcher.waitFor(500, TimeUnit.MILLISECONDS)) {
                Thread.onSpinWait();
            }
            if (!launcher.isAlive()) {
                throw new IllegalStateException(Files.readString(said));
            }
            return new Installed(data, launcher, ready(said).replaceAll("ready url=([^ ]+) .*", "$1"));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (InterruptedException cause) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(cause);
        }
    }

    String url() {
        return url;
    }

    /** The password that the start has said for somebody of the demo. */
    String password(String mail) {
        try {
            return Files.readAllLines(data.resolveSibling(data.getFileName() + ".out")).stream()
                    .filter(line -> line.contains(" as " + mail + " "))
                    .map(line -> line.replaceAll(".*: ", ""))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /** Gives an operator's command and returns its last line. */
    String admin(String... words) {
        try {
            List<String> all = command("admin", data);
            all.addAll(List.of(words));
            Process process = builder(all).redirectErrorStream(true).start();
            List<String> lines = new String(
                            process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            if (process.waitFor() != 0) {
                throw new IllegalStateException(String.join("\n", lines));
            }
            return lines.getLast();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (InterruptedException cause) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(cause);
        }
    }

    /** Ends a part of it as a power cut would, with -9; whoever watches over it starts it again. */
    void kill(String part) {
        String mark = "-Dchangeover.part=" + part + ":" + data + ":";
        ProcessHandle killed = launcher.descendants()
                .filter(process -> words(process).contains(mark))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no " + part + " is running"));
        killed.destroyForcibly();
        killed.onExit().orTimeout(1, TimeUnit.MINUTES).join();
    }

    private static String words(ProcessHandle process) {
        try {
            return Files.readString(Path.of("/proc", Long.toString(process.pid()), "cmdline"))
                    .replace('\0', ' ');
        } catch (IOException gone) {
            return "";
        }
    }

    private static List<String> command(String name, Path data) {
        return new ArrayList<>(List.of(ROOT.resolve("deploy").resolve(name).toString(), "--data", data.toString()));
    }

    private static ProcessBuilder builder(List<String> words) {
        ProcessBuilder builder = new ProcessBuilder(words);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("CHANGEOVER_BUILT", "yes");
        return builder;
    }

    private static String ready(Path said) throws IOException {
        return Files.readAllLines(said).stream()
                .filter(line -> line.startsWith("ready "))
                .findFirst()
                .orElse("");
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    @Override
    public void close() {
        launcher.destroy();
        try {
            launcher.waitFor(1, TimeUnit.MINUTES);
        } catch (InterruptedException cause) {
            Thread.currentThread().interrupt();
        }
    }
}
