package changeover.billing.bank;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** The files that were taken in: a wrong one goes again, but for the lines of which somebody has said what they are. */
@ApplicationScoped
public class KeptFiles {

    /** Nobody ever said what the line is. */
    private static final String UNSAID = """
            not exists (select 1 from bank_line_use u where u.tenant_id = l.tenant_id and u.line_id = l.id)
            and not exists (select 1 from bank_line_dismissal d where d.tenant_id = l.tenant_id and d.line_id = l.id)""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /**
     * @param name what it was called; empty when nobody said
     * @param unsaid how many of its lines would go with it
     */
    public record KeptFile(UUID id, String bank, String name, LocalDate on, int lines, int unsaid) {}

    /** Those that still have lines, the newest first. */
    public List<KeptFile> newest(int most) {
        List<KeptFile> files = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select f.id, b.name, f.name, f.made_at, n.lines, n.unsaid
                          from (select * from bank_file where exists (
                                  select 1 from bank_line l where l.tenant_id = bank_file.tenant_id and l.file_id = bank_file.id)
                                 order by made_at desc, id desc limit ?) f
                          join bank b on b.tenant_id = f.tenant_id and b.id = f.bank_id
                          join lateral (select count(*) as lines, count(*) filter (where %s) as unsaid from bank_line l
                                         where l.tenant_id = f.tenant_id and l.file_id = f.id) n on true
                         order by f.made_at desc, f.id desc""".formatted(UNSAID))) {
            select.setInt(1, most);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                Timestamp at = row.getTimestamp(4);
                files.add(new KeptFile(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getString(3),
                        at.toInstant().atZone(businesses.current().zone()).toLocalDate(),
                        row.getInt(5),
                        row.getInt(6)));
            }
            return files;
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank's files could not be listed", cause);
        }
    }

    /**
     * Takes back the lines of a file of which nobody said anything; brought again, they are new.
     *
     * @return how many went
     */
    public int takeBack(UUID file) {
        try (Connection connection = datasource.getConnection()) {
            alone(connection);
            try (PreparedStatement one = connection.prepareStatement("select 1 from bank_file where id = ?")) {
                one.setObject(1, file);
                if (!one.executeQuery().next()) {
                    throw Refusal.of("bank.no-file").thrown();
                }
            }
            try (PreparedStatement delete =
                    connection.prepareStatement("delete from bank_line l where l.file_id = ? and " + UNSAID)) {
                delete.setObject(1, file);
                int gone = delete.executeUpdate();
                if (gone == 0) {
                    throw Refusal.of("bank.file-said").thrown();
                }
                return gone;
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank's file could not be taken back", cause);
        }
    }

    static UUID add(Connection connection, UUID bank, String name) throws SQLException {
        try (PreparedStatement insert =
                connection.prepareStatement("insert into bank_file (bank_id, name) values (?, ?) returning id")) {
            insert.setObject(1, bank);
            insert.setString(2, name);
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        }
    }

    /** Nobody else brings a file or takes one back meanwhile, and nobody is saying what a line is. */
    static void alone(Connection connection) throws SQLException {
        lock(connection, "pg_advisory_xact_lock");
    }

    /** Files stay as they are meanwhile. */
    static void hold(Connection connection) throws SQLException {
        lock(connection, "pg_advisory_xact_lock_shared");
    }

    private static void lock(Connection connection, String kind) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement(
                "select " + kind + "(hashtextextended('bank files ' || current_tenant()::text, 0))")) {
            lock.executeQuery();
        }
    }
}
