package changeover.billing.bank;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Takes the lines of a bank's file in: each once, however often and in how many files it comes. */
@ApplicationScoped
public class BankFiles {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Banks banks;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** @param known lines that had come before */
    public record Taken(int fresh, int known) {}

    /**
     * What the file says, read by the bank's columns or by itself; nothing is kept.
     *
     * @throws changeover.contracts.words.Refused when it cannot be read, or its columns were never said
     */
    public List<ReadLine> look(UUID bank, byte[] file) {
        Banks.Bank found =
                banks.one(bank).orElseThrow(() -> Refusal.of("bank.not-found").thrown());
        String currency = businesses.current().currency().getCurrencyCode();
        if (OfxFile.isOne(file)) {
            return OfxFile.read(file, currency);
        }
        Columns columns = found.columns();
        if (columns == null) {
            throw Refusal.of("bank.not-mapped").at("file").thrown();
        }
        return BankTable.read(file, columns, currency);
    }

    public Taken take(UUID bank, byte[] file) {
        int digits = businesses.current().currency().getDefaultFractionDigits();
        List<ReadLine> moving = look(bank, file).stream()
                .filter(line -> minor(line.amount(), digits).signum() != 0)
                .toList();
        return take(bank, moving, digits);
    }

    /** @param lines each moves at least the smallest coin */
    private Taken take(UUID bank, List<ReadLine> lines, int digits) {
        if (lines.isEmpty()) {
            throw Refusal.of("bank.nothing").at("file").thrown();
        }
        if (lines.stream().anyMatch(line -> line.day().isAfter(today.day()))) {
            throw Refusal.of("bank.day-to-come").at("file").thrown();
        }
        try (Connection connection = datasource.getConnection()) {
            sameKind(connection, bank, lines.getFirst());
            try (PreparedStatement insert = connection.prepareStatement("""
                    insert into bank_line (bank_id, key, day, amount_minor, words, reference, way)
                    select ?::uuid, l.key, l.day, l.minor, l.words, l.reference, l.way
                      from unnest(?::text[], ?::date[], ?::bigint[], ?::text[], ?::text[], ?::text[]) with ordinality
                        as l (key, day, minor, words, reference, way, nr) order by l.nr
                    on conflict on constraint a_bank_line_is_kept_once do nothing""")) {
                insert.setString(1, bank.toString());
                insert.setArray(2, texts(connection, lines, ReadLine::key));
                insert.setArray(3, texts(connection, lines, line -> line.day().toString()));
                insert.setArray(
                        4,
                        texts(
                                connection,
                                lines,
                                line -> minor(line.amount(), digits).toString()));
                insert.setArray(5, texts(connection, lines, ReadLine::words));
                insert.setArray(6, texts(connection, lines, ReadLine::reference));
                insert.setArray(7, texts(connection, lines, BankFiles::way));
                int fresh = insert.executeUpdate();
                return new Taken(fresh, lines.size() - fresh);
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank's lines could not be kept", cause);
        }
    }

    private static @Nullable String way(ReadLine line) {
        return line.way() == null ? null : line.way().code();
    }

    /** The same line by two kinds of file would count twice, so a bank keeps to one kind. */
    private static void sameKind(Connection connection, UUID bank, ReadLine first) throws SQLException {
        try (PreparedStatement other = connection.prepareStatement(
                "select 1 from bank_line where bank_id = ? and left(key, 4) <> ? limit 1")) {
            other.setObject(1, bank);
            other.setString(2, first.key().substring(0, 4));
            if (other.executeQuery().next()) {
                throw Refusal.of("bank.other-kind").at("file").thrown();
            }
        }
    }

    private static Array texts(Connection connection, List<ReadLine> lines, Function<ReadLine, @Nullable String> said)
            throws SQLException {
        return connection.createArrayOf("text", lines.stream().map(said).toArray());
    }

    private static BigInteger minor(BigDecimal amount, int digits) {
        return amount.setScale(digits, RoundingMode.HALF_UP).unscaledValue();
    }
}
