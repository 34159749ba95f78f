package changeover.contracts.agreements;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;

/** Agreements count on by one; a business that numbered them before says from where, beyond every number that was given. */
@ApplicationScoped
public class AgreementNumbers {

    /** The largest first number. */
    public static final int MOST = 100_000_000;

    private static final String NEXT = """
            select greatest((select coalesce(max(number), 0) + 1 from agreement),
                            (select coalesce(max(first_number), 1) from agreement_numbers))""";

    private static final String BEGIN = """
            insert into agreement_numbers (first_number) values (?)
            on conflict on constraint agreements_count_from_one_number do update set first_number = excluded.first_number""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    CurrentTenant current;

    /** What the next agreement is called. */
    public int next() {
        try (Connection connection = datasource.getConnection()) {
            return next(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the agreements' numbers could not be read", cause);
        }
    }

    private static int next(Connection connection) throws SQLException {
        try (PreparedStatement ask = connection.prepareStatement(NEXT);
                ResultSet row = ask.executeQuery()) {
            row.next();
            return row.getInt(1);
        }
    }

    /** The first of some numbers. They are given one transaction after the other, so that no two agreements have the same. */
    int take(Connection connection) throws SQLException {
        standInLine(connection);
        return next(connection);
    }

    /** @throws changeover.contracts.words.Refused for a number that was passed already */
    public void begin(int number) {
        try (Connection connection = datasource.getConnection()) {
            standInLine(connection);
            int given = last(connection);
            if (number <= given || number > MOST) {
                throw Refusal.of("agreement.number-passed", Map.of("last", given))
                        .at("number")
                        .thrown();
            }
            try (PreparedStatement insert = connection.prepareStatement(BEGIN)) {
                insert.setInt(1, number);
                insert.executeUpdate();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the agreements' first number could not be kept", cause);
        }
    }

    private static int last(Connection connection) throws SQLException {
        try (PreparedStatement ask = connection.prepareStatement("select coalesce(max(number), 0) from agreement");
                ResultSet row = ask.executeQuery()) {
            row.next();
            return row.getInt(1);
        }
    }

    private void standInLine(Connection connection) throws SQLException {
        try (var lock = connection.prepareStatement("select pg_advisory_xact_lock(hashtextextended(?, 78))")) {
            lock.setString(1, "agreement numbers " + current.id());
            lock.execute();
        }
    }
}
