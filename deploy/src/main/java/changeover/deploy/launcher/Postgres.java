package changeover.deploy.launcher;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/** The real PostgreSQL inside the data folder: durable, behind passwords, on loopback only. */
final class Postgres implements Part {
    /** The major version of the programs that come with this Changeover. */
    static final int MAJOR = 18;

    private static final String MADE = "changeover.made";
    private static final Duration START = Duration.ofMinutes(2);
    private static final Duration STOP = Duration.ofMinutes(1);

    private final DataFolder folder;
    private final int port;
    private final String password;
    private @Nullable EmbeddedPostgres running;
    private volatile long pid;

    Postgres(DataFolder folder, int port, Secrets secrets) {
        this.folder = folder;
        this.port = port;
        this.password = secrets.password("postgres");
    }

    @Override
    public String name() {
        return "PostgreSQL";
    }

    @Override
    public void start() throws Exception {
        stopLeftovers(folder);
        release();
        Path passwordFile = folder.run().resolve("postgres.password");
        PrivateFile.write(passwordFile, password.getBytes(StandardCharsets.UTF_8));
        dropHalfUnpackedPrograms();
        setAsideHalfMadeData();
        ProcessBuilder.Redirect log =
                ProcessBuilder.Redirect.appendTo(folder.log("postgresql").toFile());
        running = EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(
                        folder.postgres().resolve("programs").toFile())
                .setDataDirectory(data(folder))
                .setCleanDataDirectory(false)
                .setRegisterShutdownHook(false)
                .setPort(port)
                .setPGStartupWait(START)
                .setLocaleConfig("auth-host", "scram-sha-256")
                .setLocaleConfig("auth-local", "scram-sha-256")
                .setLocaleConfig("pwfile", passwordFile.toString())
                .setLocaleConfig("locale", "C.UTF-8")
                .setConnectConfig("password", password)
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setServerConfig("unix_socket_directories", "")
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("max_connections", "100")
                .setServerConfig("shared_buffers", "128MB")
                .setServerConfig("max_wal_size", "2GB")
                // A folder filled in one go is counted before its first long question.
                .setServerConfig("autovacuum_naptime", "10s")
                .setServerConfig("log_line_prefix", "%m_[%p]_%u@%d_")
                .setErrorRedirector(log)
                .setOutputRedirector(log)
                .start();
        Files.deleteIfExists(passwordFile);
        Files.writeString(data(folder).resolve(MADE), "made by Changeover\n");
        pid = postmaster(folder);
    }

    /** Programs whose unpacking was cut off lack the library's own mark; they are unpacked again. */
    private void dropHalfUnpackedPrograms() throws IOException {
        Path programs = folder.postgres().resolve("programs");
        if (Files.exists(programs)) {
            try (DirectoryStream<Path> versions = Files.newDirectoryStream(programs, "PG-*")) {
                for (Path version : versions) {
                    if (!Files.exists(version.resolve(".exists"))) {
                        Trees.delete(version);
                    }
                }
            }
        }
    }

    /** A first start that was cut off inside the making of the cluster left nothing to go on with. */
    private void setAsideHalfMadeData() throws IOException {
        Path data = data(folder);
        if (Files.exists(data) && !Files.exists(data.resolve(MADE))) {
            Files.move(data, data.resolveSibling("unfinished-" + System.currentTimeMillis()));
        }
    }

    @Override
    public boolean alive() {
        return pid != 0 && Kernel.alive(pid);
    }

    @Override
    public void stop() {
        pid = 0;
        try {
            stopLeftovers(folder);
        } catch (IOException e) {
            throw new UncheckedIOException("PostgreSQL could not be stopped", e);
        }
    }

    /** The embedding library holds a lock for each start; it is given back before the next. */
    private void release() {
        EmbeddedPostgres old = running;
        running = null;
        if (old != null) {
            try {
                old.close();
            } catch (IOException e) {
                throw new CannotStart("PostgreSQL's lock could not be given back.", e);
            }
        }
    }

    /** A connection as the cluster's superuser. */
    Connection connect(String database) throws SQLException {
        Properties properties = new Properties();
        properties.setProperty("user", "postgres");
        properties.setProperty("password", password);
        return DriverManager.getConnection(url(database), properties);
    }

    String url(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
    }

    static Path data(DataFolder folder) {
        return folder.postgres().resolve("data");
    }

    /** @throws CannotStart when the folder was written by a newer PostgreSQL */
    static void checkVersion(DataFolder folder) throws IOException {
        Path file = data(folder).resolve("PG_VERSION");
        if (Files.exists(file) && Integer.parseInt(Files.readString(file).strip()) != MAJOR) {
            throw new CannotStart(
                    "The data in %s belong to PostgreSQL %s, this Changeover brings PostgreSQL %d; start the Changeover that wrote them."
                            .formatted(folder.root(), Files.readString(file).strip(), MAJOR));
        }
    }

    /**
     * Stops a server that an earlier launcher left behind, waits until none of its processes works in the folder, and takes away its pid file: another
     * process may have that number by now, or the dead one may still show.
     */
    static void stopLeftovers(DataFolder folder) throws IOException {
        Path data = data(folder);
        if (!Files.exists(data)) {
            return;
        }
        List<Long> left = Kernel.workingIn(data);
        long postmaster = postmaster(folder);
        if (left.contains(postmaster)) {
            Kernel.signal("INT", postmaster);
            Waiting.until(STOP, () -> !Kernel.alive(postmaster));
        }
        if (!Waiting.until(STOP, () -> left.stream().noneMatch(Kernel::alive))) {
            left.forEach(process -> Kernel.signal("KILL", process));
            Waiting.until(STOP, () -> left.stream().noneMatch(Kernel::alive));
        }
        if (Kernel.workingIn(data).isEmpty()) {
            Files.deleteIfExists(data.resolve("postmaster.pid"));
        }
    }

    /** The number of the server's first process as its pid file tells it; 0 when there is none. */
    private static long postmaster(DataFolder folder) throws IOException {
        Path file = data(folder).resolve("postmaster.pid");
        return Files.exists(file)
                ? Long.parseLong(Files.readAllLines(file).getFirst().strip())
                : 0;
    }
}
