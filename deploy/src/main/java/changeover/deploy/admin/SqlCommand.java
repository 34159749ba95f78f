package changeover.deploy.admin;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Any statement, through the same roles and locks as the product; rows come as CSV. */
final class SqlCommand implements AdminCommand {
    @Override
    public String words() {
        return "sql";
    }

    @Override
    public String help() {
        return """
                Runs a statement as one of the product's two roles and prints its rows as CSV; with a business, as the product does for it.
                  deploy/admin sql --as app|owner [--business S] -c SQL""";
    }

    @Override
    public int run(Running running, List<String> rest) throws SQLException, IOException {
        Words words = new Words("sql", rest, Set.of());
        words.allow(Set.of("--as", "--business", "-c"));
        String role = words.needed("--as", "app or owner");
        if (!role.equals("app") && !role.equals("owner")) {
            throw new Refusing("--as is app or owner, not " + role + ".");
        }
        String sql = words.needed("-c", "the statement");
        try (Connection connection = running.connect(role)) {
            connection.setAutoCommit(false);
            if (words.has("--business")) {
                enter(running, connection, words.needed("--business", "its slug"));
            }
            try (Statement statement = connection.createStatement()) {
                print(statement, statement.execute(sql));
            }
            connection.commit();
        }
        return 0;
    }

    private static void enter(Running running, Connection connection, String slug) throws SQLException {
        try (PreparedStatement set = connection.prepareStatement("select set_config('app.tenant', ?, false)")) {
            set.setString(1, business(running, slug));
            set.execute();
        }
    }

    private static String business(Running running, String slug) throws SQLException {
        try (Connection owner = running.connect("owner");
                PreparedStatement ask = owner.prepareStatement("select id::text from business where slug = ?")) {
            ask.setString(1, slug);
            try (ResultSet row = ask.executeQuery()) {
                if (!row.next()) {
                    throw new Refusing("There is no business " + slug + " here.");
                }
                return row.getString(1);
            }
        }
    }

    private static void print(Statement statement, boolean rows) throws SQLException, IOException {
        if (!rows) {
            System.out.println(statement.getUpdateCount());
            return;
        }
        try (ResultSet found = statement.getResultSet()) {
            CSVPrinter printer =
                    CSVFormat.RFC4180.builder().setRecordSeparator('\n').get().print(System.out);
            int columns = found.getMetaData().getColumnCount();
            for (int column = 1; column <= columns; column++) {
                printer.print(found.getMetaData().getColumnLabel(column));
            }
            printer.println();
            while (found.next()) {
                for (int column = 1; column <= columns; column++) {
                    printer.print(found.getString(column));
                }
                printer.println();
            }
            printer.flush();
        }
    }
}
