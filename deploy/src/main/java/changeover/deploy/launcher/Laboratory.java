package changeover.deploy.launcher;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A database of its own for a measure, as durable and as locked as anybody's, thrown away afterwards. */
public final class Laboratory implements AutoCloseable {
    private final DataFolder folder;
    private final Postgres postgres;
    private final Map<String, String> environment;

    private Laboratory(DataFolder folder, Postgres postgres, Map<String, String> environment) {
        this.folder = folder;
        this.postgres = postgres;
        this.environment = environment;
    }

    /** Starts PostgreSQL in the folder, with the product's roles. */
    public static Laboratory open(Path root, Path source) throws Exception {
        DataFolder folder = new DataFolder(root);
        folder.prepare();
        Secrets secrets = new Secrets(folder.secrets());
        Application.keepCopy(folder, source.resolve("deploy").resolve("target").resolve("quarkus-app"));
        Postgres postgres = new Postgres(folder, Ports.remembered(folder, "postgres-port", "127.0.0.1"), secrets);
        postgres.start();
        Roles.make(postgres, secrets);
        Address nowhere = Address.of("127.0.0.1", StartOptions.DEFAULT_PORT);
        Keycloak keycloak = new Keycloak(folder, secrets, postgres.url("keycloak"), nowhere, nowhere);
        Map<String, String> environment =
                new ApplicationSettings(folder, secrets, postgres, keycloak, nowhere).environment();
        environment.put("QUARKUS_OIDC_TENANT_ENABLED", "false");
        return new Laboratory(folder, postgres, environment);
    }

    /** Runs a command inside the application on this database, lets it speak, and returns the last thing it said. */
    public String lastLine(List<String> command) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(Child.java()));
        words.addAll(Application.javaWords());
        words.addAll(List.of("-Xms1g", "-Xmx1g", "-jar", Application.jar(folder)));
        words.addAll(command);
        ProcessBuilder builder = new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(environment);
        Process process = builder.start();
        Thread alsoWhenStopped = new Thread(() -> {
            process.destroyForcibly();
            postgres.stop();
        });
        Runtime.getRuntime().addShutdownHook(alsoWhenStopped);
        String last = "";
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                System.out.println(line);
                last = line;
            }
        }
        return process.waitFor() == 0 ? last : "";
    }

    @Override
    public void close() throws IOException {
        postgres.stop();
        Trees.delete(folder.root());
    }
}
