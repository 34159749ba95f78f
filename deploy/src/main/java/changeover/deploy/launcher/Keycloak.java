package changeover.deploy.launcher;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/** Who signs in: Keycloak on its own database of the same PostgreSQL, its realm imported on the first start. */
final class Keycloak implements Part {
    static final String LAUNCHER_CLIENT = "changeover-launcher";

    private static final Duration START = Duration.ofMinutes(6);

    private final DataFolder folder;
    private final KeycloakProgram program;
    private final Secrets secrets;
    private final String databaseUrl;
    private final String listen;
    private final String host;
    private final int port;
    private final String applicationUrl;
    private @Nullable Child child;

    Keycloak(DataFolder folder, Secrets secrets, String databaseUrl, Address keycloak, Address application) {
        this.folder = folder;
        this.program = new KeycloakProgram(folder);
        this.secrets = secrets;
        this.databaseUrl = databaseUrl;
        this.listen = keycloak.listen();
        this.host = keycloak.host();
        this.port = keycloak.port();
        this.applicationUrl = application.url();
    }

    KeycloakProgram program() {
        return program;
    }

    @Override
    public String name() {
        return "Keycloak";
    }

    String url() {
        return "http://" + host + ":" + port;
    }

    String realmUrl() {
        return url() + "/realms/changeover";
    }

    @Override
    public void start() throws Exception {
        boolean imported = folder.settings().containsKey("realm");
        Child started = Child.start(folder, "keycloak", words(imported), environment());
        child = started;
        Waiting.until(START, () -> !started.alive() || Http.answers(realmUrl()));
        if (!started.alive() || !Http.answers(realmUrl())) {
            throw new CannotStart("Keycloak did not start; the reasons stand in " + folder.log("keycloak") + ".");
        }
        if (!imported) {
            folder.remember("realm", "imported");
        }
        register();
    }

    /** Keycloak sends people back only to addresses that it knows: after a change of port they are told anew. */
    private void register() throws Exception {
        Properties settings = folder.settings();
        if (!applicationUrl.equals(settings.getProperty("registered"))) {
            new KeycloakClients(url(), LAUNCHER_CLIENT, secrets.password("keycloak-launcher-client"))
                    .register(applicationUrl);
            folder.remember("registered", applicationUrl);
        }
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

    /** The words of Keycloak's own start script, without the script: one process to watch. */
    private List<String> words(boolean imported) {
        Path home = program.home();
        List<String> words = new java.util.ArrayList<>(List.of(
                "-Xms128m",
                "-Xmx400m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:MaxMetaspaceSize=256m",
                "-XX:+ExitOnOutOfMemoryError",
                "-Dfile.encoding=UTF-8",
                "-Duser.language=en",
                "-Duser.country=US",
                "--add-opens=java.base/java.util=ALL-UNNAMED",
                "--add-opens=java.base/java.util.concurrent=ALL-UNNAMED",
                "--add-opens=java.base/java.security=ALL-UNNAMED",
                "--add-opens=java.base/java.lang=ALL-UNNAMED",
                "--enable-native-access=ALL-UNNAMED",
                "-Djava.util.concurrent.ForkJoinPool.common.threadFactory=io.quarkus.bootstrap.forkjoin.QuarkusForkJoinWorkerThreadFactory",
                "-Dkc.home.dir=" + home,
                "-Djboss.server.config.dir=" + home.resolve("conf"),
                "-Djava.util.logging.manager=org.jboss.logmanager.LogManager",
                "-Dpicocli.disable.closures=true",
                "-Dquarkus-log-max-startup-records=10000",
                "-cp",
                home.resolve("lib/quarkus-run.jar").toString(),
                "io.quarkus.bootstrap.runner.QuarkusEntryPoint",
                "start",
                "--optimized",
                "--cache=local"));
        if (!imported) {
            words.add("--import-realm");
        }
        return words;
    }

    private Map<String, String> environment() {
        Map<String, String> environment = new HashMap<>();
        environment.put("KC_DB_URL", databaseUrl);
        environment.put("KC_DB_USERNAME", "keycloak");
        environment.put("KC_DB_PASSWORD", secrets.password("keycloak"));
        environment.put("KC_DB_POOL_MAX_SIZE", "15");
        environment.put("KC_HTTP_ENABLED", "true");
        environment.put("KC_HTTP_HOST", listen);
        environment.put("KC_HTTP_PORT", Integer.toString(port));
        environment.put("KC_HOSTNAME", url());
        environment.put("KC_BOOTSTRAP_ADMIN_CLIENT_ID", LAUNCHER_CLIENT);
        environment.put("KC_BOOTSTRAP_ADMIN_CLIENT_SECRET", secrets.password("keycloak-launcher-client"));
        environment.put("CHANGEOVER_URL", applicationUrl);
        environment.put("CHANGEOVER_WEB_SECRET", secrets.password("keycloak-web-client"));
        environment.put("CHANGEOVER_ADMIN_SECRET", secrets.password("keycloak-admin-client"));
        return environment;
    }
}
