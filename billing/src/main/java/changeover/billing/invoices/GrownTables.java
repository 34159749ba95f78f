package changeover.billing.invoices;

import java.sql.Connection;
import java.sql.SQLException;

/** After many rows the planner looks again at the tables that have more than doubled; a few rows are not worth a look. */
final class GrownTables {

    private static final int MANY = 50;

    private GrownTables() {}

    static void lookAgain(Connection connection, int rows) throws SQLException {
        if (rows >= MANY) {
            try (var look = connection.prepareStatement("select look_again_at_billing()")) {
                look.execute();
            }
        }
    }
}
