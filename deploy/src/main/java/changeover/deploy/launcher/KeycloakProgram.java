package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Keycloak's program in the data folder: brought by Maven, unpacked and built for PostgreSQL once, then kept. */
final class KeycloakProgram {
    static final String VERSION = "26.7.3";

    private static final String ARTIFACT = "org.keycloak:keycloak-quarkus-dist:" + VERSION + ":tar.gz";
    private static final String COPY = "org.apache.maven.plugins:maven-dependency-plugin:3.8.1:copy";
    private static final String BUILT = "changeover.built";

    private final DataFolder folder;

    KeycloakProgram(DataFolder folder) {
        this.folder = folder;
    }

    Path home() {
        return folder.keycloak().resolve("keycloak-" + VERSION);
    }

    boolean ready() {
        return Files.exists(home().resolve(BUILT));
    }

    /** Brings, unpacks and builds the program where that is not done yet. */
    void prepare() throws Exception {
        if (ready()) {
            return;
        }
        Path log = folder.log("keycloak-build");
        Path draft = folder.keycloak().resolve("unpacked");
        Trees.delete(draft);
        Trees.delete(home());
        Files.createDirectories(draft);
        run(
                List.of("tar", "xzf", archive(log).toString(), "-C", draft.toString()),
                log,
                "Keycloak could not be unpacked");
        Files.move(draft.resolve("keycloak-" + VERSION), home());
        Trees.delete(draft);
        Trees.delete(folder.keycloak().resolve("archive"));
        Files.createDirectories(home().resolve("data/import"));
        try (var realm = Objects.requireNonNull(
                KeycloakProgram.class.getResourceAsStream("/changeover/deploy/changeover-realm.json"))) {
            Files.copy(realm, home().resolve("data/import/changeover-realm.json"));
        }
        run(
                List.of(home().resolve("bin/kc.sh").toString(), "build", "--db=postgres"),
                log,
                "Keycloak could not be built");
        Files.writeString(home().resolve(BUILT), "built by Changeover\n");
    }

    private Path archive(Path log) throws IOException, InterruptedException {
        Path archive = folder.keycloak().resolve("archive");
        String maven = Objects.requireNonNullElse(System.getenv("MAVEN_COMMAND"), "mvn");
        List<String> copy = List.of(maven, "-B", COPY, "-Dartifact=" + ARTIFACT, "-DoutputDirectory=" + archive);
        Map<String, String> environment = Map.of("JAVA_HOME", System.getProperty("java.home"));
        List<String> offline = Stream.concat(copy.stream(), Stream.of("-o")).toList();
        if (!Program.run(offline, environment, archive, log) && !Program.run(copy, environment, archive, log)) {
            throw new CannotStart(
                    "Keycloak " + VERSION + " could not be brought by Maven; the reasons stand in " + log + ".");
        }
        return archive.resolve("keycloak-quarkus-dist-" + VERSION + ".tar.gz");
    }

    private void run(List<String> words, Path log, String otherwise) throws IOException, InterruptedException {
        if (!Program.run(words, Map.of("JAVA_HOME", System.getProperty("java.home")), folder.keycloak(), log)) {
            throw new CannotStart(otherwise + "; the reasons stand in " + log + ".");
        }
    }
}
