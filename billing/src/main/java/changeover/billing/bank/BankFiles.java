package changeover.billing.bank;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** @param name what the file is called; empty when nobody said */
    public Taken take(UUID bank, String name, byte[] file) {
        int digits = businesses.current().currency().getDefaultFractionDigits();
        return take(bank, name, look(bank, file), digits);
    }

    public Taken take(UUID bank, byte[] file) {
        return take(bank, "", file);
    }

    /** @param lines each moves some money, in whole coins */
    private Taken take(UUID bank, String name, List<ReadLine> lines, int digits) {
        if (lines.isEmpty()) {
            throw Refusal.of("bank.nothing").at("file").thrown();
        }
        if (lines.stream().anyMatch(line -> line.day().isAfter(today.day()))) {
            throw Refusal.of("bank.day-to-come").at("file").thrown();
        }
        try (Connection connection = datasource.getConnection()) {
            sameKind(connection, bank, lines.getFirst());
            KeptFiles.alone(connection);
            List<ReadLine> fresh = fresh(kept(connection, bank, lines, digits), lines, digits);
            if (!fresh.isEmpty()) {
                write(connection, bank, KeptFiles.add(connection, bank, BankText.words(name, 100)), fresh, digits);
            }
            return new Taken(fresh.size(), lines.size() - fresh.size());
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank's lines could not be kept", cause);
        }
    }

    /**
     * What is not kept yet. A bank's own number names one line; where a bank gives it to another amount, that is another line,
     * and somebody looks at both.
     */
    static List<ReadLine> fresh(Map<String, BigInteger> kept, List<ReadLine> lines, int digits) {
        Map<String, BigInteger> known = new HashMap<>(kept);
        List<ReadLine> fresh = new ArrayList<>();
        for (ReadLine line : lines) {
            BigInteger minor = minor(line.amount(), digits);
            if (known.containsKey(line.key() + "=" + minor)) {
                continue;
            }
            BigInteger before = known.putIfAbsent(line.key(), minor);
            if (before == null) {
                fresh.add(line);
            } else if (!before.equals(minor)) {
                ReadLine other = line.as(line.key() + "=" + minor);
                if (known.putIfAbsent(other.key(), minor) == null) {
                    fresh.add(other);
                }
            }
        }
        return fresh;
    }

    /** The amounts of the lines that are kept under these keys, or under one that tells two of a number apart. */
    private static Map<String, BigInteger> kept(Connection connection, UUID bank, List<ReadLine> lines, int digits)
            throws SQLException {
        Map<String, BigInteger> kept = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select l.key, l.amount_minor from bank_line l
                  join unnest(?::text[], ?::text[]) as said (plain, apart) on l.key in (said.plain, said.apart)
                 where l.bank_id = ?""")) {
            select.setArray(1, texts(connection, lines, ReadLine::key));
            select.setArray(2, texts(connection, lines, line -> line.key() + "=" + minor(line.amount(), digits)));
            select.setObject(3, bank);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                kept.put(row.getString(1), BigInteger.valueOf(row.getLong(2)));
            }
        }
        return kept;
    }

    private static void write(Connection connection, UUID bank, UUID file, List<ReadLine> lines, int digits)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into bank_line (bank_id, file_id, key, day, amount_minor, words, reference, way)
                select ?::uuid, ?::uuid, l.key, l.day, l.minor, l.words, l.reference, l.way
                  from unnest(?::text[], ?::date[], ?::bigint[], ?::text[], ?::text[], ?::text[]) with ordinality
                    as l (key, day, minor, words, reference, way, nr) order by l.nr
                on conflict on constraint a_bank_line_is_kept_once do nothing""")) {
            insert.setString(1, bank.toString());
            insert.setString(2, file.toString());
            insert.setArray(3, texts(connection, lines, ReadLine::key));
            insert.setArray(4, texts(connection, lines, line -> line.day().toString()));
            insert.setArray(
                    5,
                    texts(
                            connection,
                            lines,
                            line -> minor(line.amount(), digits).toString()));
            insert.setArray(6, texts(connection, lines, ReadLine::words));
            insert.setArray(7, texts(connection, lines, ReadLine::reference));
            insert.setArray(8, texts(connection, lines, BankFiles::way));
            insert.executeUpdate();
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
        return amount.setScale(digits).unscaledValue();
    }
}
