package changeover.deploy.launcher;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The four roles and two databases, made from the same {@code roles.sql} that an operator gives to a PostgreSQL of their own. */
final class Roles {
    /** A role or a database that exists already: an earlier first start got this far. */
    private static final Set<String> EXISTS = Set.of("42710", "42P04");

    private Roles() {}

    /** Makes them with the installation's own passwords. */
    static void make(Postgres postgres, Secrets secrets) throws SQLException, IOException {
        try (Connection superuser = postgres.connect("postgres")) {
            make(
                    superuser,
                    Map.of(
                            "owner_password", secrets.password("changeover_owner"),
                            "app_password", secrets.password("changeover_app"),
                            "lookup_password", secrets.password("changeover_lookup"),
                            "keycloak_password", secrets.password("keycloak")));
        }
    }

    private static void make(Connection superuser, Map<String, String> passwords) throws SQLException, IOException {
        try (Statement statement = superuser.createStatement()) {
            for (String sql : statements(passwords)) {
                makeOnce(statement, sql);
            }
        }
    }

    private static void makeOnce(Statement statement, String sql) throws SQLException {
        try {
            statement.execute(sql);
        } catch (SQLException e) {
            if (!EXISTS.contains(e.getSQLState())) {
                throw e;
            }
        }
    }

    private static Iterable<String> statements(Map<String, String> passwords) throws IOException {
        String script;
        try (InputStream in = Objects.requireNonNull(Roles.class.getResourceAsStream("/changeover/deploy/roles.sql"))) {
            script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (var password : passwords.entrySet()) {
            script = script.replace(
                    ":'" + password.getKey() + "'", "'" + password.getValue().replace("'", "''") + "'");
        }
        String commands = script.replaceAll("(?m)^\\s*--.*$", "");
        return Arrays.stream(commands.split(";"))
                .map(String::strip)
                .filter(sql -> !sql.isEmpty())
                .toList();
    }
}
