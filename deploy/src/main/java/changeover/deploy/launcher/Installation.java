package changeover.deploy.launcher;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/** The three parts of one installation, in the order in which they need each other. */
final class Installation {
    private static final Path BUILT =
            Path.of(System.getProperty("changeover.root", "."), "deploy", "target", "quarkus-app");

    private static final Duration PACE = Duration.ofSeconds(1);

    private final DataFolder folder;
    private final StartOptions options;
    private final Steps steps;
    private final Supervisor supervisor;
    private final Secrets secrets;
    private final Demo demo;
    private @Nullable Application application;

    Installation(DataFolder folder, StartOptions options, Steps steps) {
        this.folder = folder;
        this.options = options;
        this.steps = steps;
        this.supervisor = new Supervisor(steps);
        this.secrets = new Secrets(folder.secrets());
        this.demo = new Demo(folder, options.demo());
    }

    /** Returns when everything answers. */
    void start() throws Exception {
        Postgres.checkVersion(folder);
        Mode.settle(folder, options.rehearsal());
        Child.stopLeftovers(folder, "application");
        Child.stopLeftovers(folder, "keycloak");
        Postgres.stopLeftovers(folder);
        Ports.requireFree(options.listen(), options.port());
        boolean first = !folder.settings().containsKey("ready");

        Address address = Address.of(options.listen(), options.port());
        Address signIn = Address.of(options.listen(), Ports.remembered(folder, "keycloak-port", options.listen()));
        Postgres postgres = new Postgres(folder, Ports.remembered(folder, "postgres-port", "127.0.0.1"), secrets);
        Keycloak keycloak = new Keycloak(folder, secrets, postgres.url("keycloak"), signIn, address);
        ApplicationSettings settings = new ApplicationSettings(folder, secrets, postgres, keycloak, address);
        ExecutorService beside = Executors.newVirtualThreadPerTaskExecutor();
        try {
            Future<?> program = beside.submit(() -> prepare(keycloak));
            Application.keepCopy(folder, BUILT);
            steps.take("PostgreSQL", () -> start(postgres));
            makeRoles(postgres);
            finish(program);
            Future<?> signingIn = beside.submit(
                    () -> steps.take(first ? "Keycloak, with its realm" : "Keycloak", () -> start(keycloak)));
            if (demo.toLoad()) {
                finish(signingIn);
                steps.take("the demo", () -> demo.load(settings.environment()));
            }
            Application serving = new Application(folder, address, settings::environment);
            steps.take("the application", () -> start(serving));
            application = serving;
            finish(signingIn);
        } finally {
            beside.shutdownNow();
        }
        settings.publish(ProcessHandle.current().pid());
        folder.remember("ready", "true");
        demo.signIns().forEach(line -> steps.line(line));
        steps.line("ready url=%s seconds=%d first=%s demo=%s"
                .formatted(address.url(), steps.seconds(), first, demo.loaded()));
    }

    private Object prepare(Keycloak keycloak) throws Exception {
        if (!keycloak.program().ready()) {
            steps.take("Keycloak was unpacked and built", () -> {
                keycloak.program().prepare();
                return true;
            });
        }
        return true;
    }

    private Object start(Part part) throws Exception {
        supervisor.start(part);
        return true;
    }

    private void makeRoles(Postgres postgres) throws Exception {
        if (!folder.settings().containsKey("roles")) {
            Roles.make(postgres, secrets);
            folder.remember("roles", "made");
        }
        try (Connection database = postgres.connect("changeover")) {
            Migrations.check(folder, database);
        }
    }

    private static void finish(Future<?> task) throws Exception {
        try {
            task.get();
        } catch (java.util.concurrent.ExecutionException e) {
            throw e.getCause() instanceof Exception cause ? cause : e;
        }
    }

    /** Stays until the process is told to stop; a rehearsal whose day has moved on gets its application anew. */
    void watch() {
        String day = rehearsalDay();
        while (!supervisor.stopping()) {
            Waiting.pause(PACE);
            Application serving = application;
            if (serving != null && !day.equals(rehearsalDay())) {
                day = rehearsalDay();
                steps.happened("the rehearsal has come to " + day);
                supervisor.renew(serving);
            }
        }
    }

    private String rehearsalDay() {
        return options.rehearsal().isEmpty() ? "" : folder.settings().getProperty("rehearsal-day", "");
    }

    boolean stopping() {
        return supervisor.stopping();
    }

    void stop() {
        supervisor.stopAll();
        try {
            Files.deleteIfExists(folder.run().resolve(ApplicationSettings.RUNNING));
        } catch (java.io.IOException e) {
            steps.happened("the note about the running installation stays behind: " + e.getMessage());
        }
    }
}
