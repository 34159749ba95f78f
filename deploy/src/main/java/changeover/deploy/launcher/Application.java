package changeover.deploy.launcher;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The product itself: the packaged application, on the same jar and the same settings as anywhere else. */
final class Application implements Part {
    private static final Duration START = Duration.ofMinutes(3);

    private final DataFolder folder;
    private final Address address;
    private final Supplier<Map<String, String>> environment;
    private @Nullable Child child;

    Application(DataFolder folder, Address address, Supplier<Map<String, String>> environment) {
        this.folder = folder;
        this.address = address;
        this.environment = environment;
    }

    /** Keeps a copy of the built application in the folder, so that a build beside a running installation disturbs nothing. */
    static void keepCopy(DataFolder folder, Path built) throws Exception {
        Path jar = built.resolve("quarkus-run.jar");
        String stamp = Files.getLastModifiedTime(jar) + " " + Files.size(jar);
        if (stamp.equals(folder.settings().getProperty("application"))
                && Files.exists(folder.application().resolve("quarkus-run.jar"))) {
            return;
        }
        Path draft = folder.application().resolveSibling("app.new");
        Trees.delete(draft);
        Trees.copy(built, draft);
        Trees.delete(folder.application());
        Files.move(draft, folder.application());
        folder.remember("application", stamp);
    }

    @Override
    public String name() {
        return "the application";
    }

    @Override
    public void start() throws Exception {
        List<String> words = new ArrayList<>(javaWords());
        words.add("-Xmx400m");
        words.add("-jar");
        words.add(jar(folder));
        Child started = Child.start(folder, "application", words, environment.get());
        child = started;
        String health = "http://" + (address.listen().equals("0.0.0.0") ? "127.0.0.1" : address.host()) + ":"
                + address.port() + "/q/health/ready";
        Waiting.until(START, () -> !started.alive() || Http.answers(health));
        if (!started.alive() || !Http.answers(health)) {
            throw new CannotStart(
                    "The application did not start; the reasons stand in " + folder.log("application") + ".");
        }
    }

    /** What every Java process of the application is given. */
    static List<String> javaWords() {
        return List.of(
                "-XX:+UseSerialGC",
                "-XX:+ExitOnOutOfMemoryError",
                "--enable-native-access=ALL-UNNAMED",
                "--sun-misc-unsafe-memory-access=allow",
                "-Djava.util.logging.manager=org.jboss.logmanager.LogManager");
    }

    static String jar(DataFolder folder) {
        return folder.application().resolve("quarkus-run.jar").toString();
    }

    @Override
    public boolean alive() {
        Child current = child;
        return current != null && current.alive();
    }

    @Override
    public void stop() {
        Child current = child;
        if (current != null) {
            current.stop();
        }
    }
}
