package changeover.billing.bank;

import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The banks whose files the business brings, each with its columns once they were said. */
@ApplicationScoped
public class Banks {

    @Inject
    AgroalDataSource datasource;

    /** @param columns null until somebody said them; a file that says itself what is what needs none */
    public record Bank(UUID id, String name, @Nullable Columns columns) {}

    public List<Bank> all() {
        return read("order by name", null);
    }

    public Optional<Bank> one(UUID id) {
        return read("where id = ?", id).stream().findFirst();
    }

    /** The bank of that name, named now if it is new. */
    public UUID named(String name) {
        String line = BankText.words(name, 60);
        if (line.isEmpty()) {
            throw Refusal.of("bank.name").at("name").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into bank (name) values (?)
                        on conflict on constraint one_bank_a_name do update set name = excluded.name returning id""")) {
            insert.setString(1, line);
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank could not be kept", cause);
        }
    }

    /** What the columns say from now on; lines that are kept stay as they were read. */
    public void map(UUID bank, Columns columns) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement update = connection.prepareStatement("""
                        update bank set separator = ?, head_rows = ?, day_column = ?, day_style = ?, amount_column = ?,
                               out_column = ?, decimal_comma = ?, words_columns = ?, reference_column = ?, kind_column = ?
                         where id = ?""")) {
            update.setString(1, String.valueOf(columns.separator()));
            update.setInt(2, columns.headRows());
            update.setInt(3, columns.dayColumn());
            update.setString(4, columns.dayStyle().code());
            update.setInt(5, columns.amountColumn());
            update.setObject(6, columns.outColumn());
            update.setBoolean(7, columns.decimalComma());
            update.setArray(
                    8, connection.createArrayOf("int4", columns.wordsColumns().toArray()));
            update.setObject(9, columns.referenceColumn());
            update.setObject(10, columns.kindColumn());
            update.setObject(11, bank);
            if (update.executeUpdate() == 0) {
                throw Refusal.of("bank.not-found").thrown();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the columns could not be kept", cause);
        }
    }

    /** @param id bound where the rest asks for one, else null */
    private List<Bank> read(String rest, @Nullable UUID id) {
        List<Bank> banks = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select id, name, separator, head_rows, day_column, day_style, amount_column, out_column,
                               decimal_comma, words_columns, reference_column, kind_column from bank\s""" + rest)) {
            if (id != null) {
                select.setObject(1, id);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                banks.add(new Bank(row.getObject(1, UUID.class), row.getString(2), columns(row)));
            }
            return banks;
        } catch (SQLException cause) {
            throw new IllegalStateException("the banks could not be read", cause);
        }
    }

    private static @Nullable Columns columns(ResultSet row) throws SQLException {
        String separator = row.getString(3);
        if (separator == null) {
            return null;
        }
        return new Columns(
                separator.charAt(0),
                row.getInt(4),
                row.getInt(5),
                DayStyle.of(row.getString(6)).orElse(DayStyle.YEAR_MONTH_DAY),
                row.getInt(7),
                row.getObject(8, Integer.class),
                row.getBoolean(9),
                Arrays.stream((Integer[]) row.getArray(10).getArray()).toList(),
                row.getObject(11, Integer.class),
                row.getObject(12, Integer.class));
    }
}
