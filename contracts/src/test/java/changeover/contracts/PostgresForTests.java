package changeover.contracts;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.util.Map;

/** A real PostgreSQL with the roles of the house: an owner who migrates, the application, and the look-ups. */
public class PostgresForTests implements QuarkusTestResourceLifecycleManager {

    private static EmbeddedPostgres postgres;

    @Override
    public synchronized Map<String, String> start() {
        try {
            postgres = EmbeddedPostgres.builder()
                    .setServerConfig("listen_addresses", "127.0.0.1")
                    .setServerConfig("unix_socket_directories", "")
                    .setServerConfig("autovacuum_naptime", "5s")
                    .start();
            try (var connection = postgres.getPostgresDatabase().getConnection();
                    var statement = connection.createStatement()) {
                statement.execute("create role changeover_owner login bypassrls password 'owner'");
                statement.execute("create role changeover_app login password 'app'");
                statement.execute("create role changeover_lookup login password 'lookup'");
                statement.execute("create database changeover owner changeover_owner");
            }
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        String url = "jdbc:postgresql://127.0.0.1:" + postgres.getPort() + "/changeover";
        return Map.ofEntries(
                Map.entry("quarkus.datasource.jdbc.url", url),
                Map.entry("quarkus.datasource.username", "changeover_app"),
                Map.entry("quarkus.datasource.password", "app"),
                Map.entry("quarkus.datasource.lookup.jdbc.url", url),
                Map.entry("quarkus.datasource.lookup.username", "changeover_lookup"),
                Map.entry("quarkus.datasource.lookup.password", "lookup"),
                Map.entry("quarkus.flyway.username", "changeover_owner"),
                Map.entry("quarkus.flyway.password", "owner"));
    }

    @Override
    public synchronized void stop() {
        try {
            postgres.close();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
