package changeover.contracts.oldsheet;

import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The old spreadsheets that were brought, each with the way it is read; the last way that was said serves the next file too. */
@ApplicationScoped
public class OldSheets {

    private static final int LONGEST_NAME = 100;
    private static final String LAST = "where reading is not null order by read_at desc, id desc limit 1";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /**
     * One file.
     *
     * @param forgotten whether its bytes were taken away
     * @param named whether a person said how it is read
     * @param broughtAt null before its homes were written
     */
    public record Kept(
            UUID id,
            String name,
            OffsetDateTime at,
            boolean forgotten,
            boolean named,
            @Nullable OffsetDateTime broughtAt) {}

    /** @throws changeover.contracts.words.Refused when it is no table */
    public UUID keep(String name, byte[] file) {
        SheetTable.of(file);
        String line = name.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}]+", " ").strip();
        return run("insert into old_sheet (name, file) values (?, ?) returning id", insert -> {
                    insert.setString(1, line.length() <= LONGEST_NAME ? line : line.substring(0, LONGEST_NAME));
                    insert.setBytes(2, file);
                    return rows(insert, row -> row.getObject(1, UUID.class));
                })
                .getFirst();
    }

    /** The latest first. */
    public List<Kept> all() {
        return kept("order by made_at desc, id desc", null);
    }

    public Optional<Kept> one(UUID id) {
        return kept("where id = ?", id).stream().findFirst();
    }

    /** Empty for a file that was forgotten, or is nobody's here. */
    public Optional<SheetTable> table(UUID id) {
        return run("select file from old_sheet where id = ? and file is not null", ask -> {
                    ask.setObject(1, id);
                    return rows(ask, row -> row.getBytes(1));
                })
                .stream()
                .findFirst()
                .map(SheetTable::of);
    }

    /** As it was said for this file, else as the last one was read, and a guess for titles that are new. */
    public SheetReading reading(UUID id, SheetTable table) {
        return reading("where id = ? and reading is not null", id)
                .or(() -> last(table))
                .orElseGet(() -> SheetReading.guessed(
                        table,
                        businesses.current().region(),
                        businesses.current().language()));
    }

    /** As the last file was read; empty before any was. */
    public Optional<SheetReading> last(SheetTable table) {
        return reading(LAST, null).map(last -> last.over(table));
    }

    /** What was said of words in earlier files stays said. */
    public void read(UUID id, SheetReading reading) {
        SheetReading before = reading(LAST, null).orElse(reading);
        String json = CatalogueJson.write(new SheetReading(
                reading.columns(),
                reading.dayOrder(),
                reading.region(),
                reading.language(),
                reading.plan(),
                reading.asksTheRest(),
                both(before.kinds(), reading.kinds()),
                both(before.plans(), reading.plans())));
        run("update old_sheet set reading = ?::jsonb, read_at = now() where id = ? returning id", update -> {
            update.setString(1, json);
            update.setObject(2, id);
            return rows(update, row -> row.getObject(1, UUID.class));
        });
    }

    /** Held until the end of the transaction, so that two people do not bring it at once. */
    void hold(UUID id) {
        run("select id from old_sheet where id = ? for update", ask -> {
            ask.setObject(1, id);
            return rows(ask, row -> row.getObject(1, UUID.class));
        });
    }

    void brought(UUID id) {
        run("update old_sheet set brought_at = now() where id = ? returning id", update -> {
            update.setObject(1, id);
            return rows(update, row -> row.getObject(1, UUID.class));
        });
    }

    /** Its bytes go; how it was read stays for the next one. */
    public void forget(UUID id) {
        run("update old_sheet set file = null where id = ? returning id", update -> {
            update.setObject(1, id);
            return rows(update, row -> row.getObject(1, UUID.class));
        });
    }

    private static Map<String, String> both(Map<String, String> before, Map<String, String> now) {
        Map<String, String> both = new HashMap<>(before);
        both.putAll(now);
        return both;
    }

    private Optional<SheetReading> reading(String which, @Nullable UUID id) {
        return run("select reading::text from old_sheet " + which, ask -> {
                    if (id != null) {
                        ask.setObject(1, id);
                    }
                    return rows(ask, row -> row.getString(1));
                })
                .stream()
                .findFirst()
                .map(json -> CatalogueJson.read(json, SheetReading.class));
    }

    private List<Kept> kept(String which, @Nullable UUID id) {
        return run(
                "select id, name, made_at, file is null, reading is not null, brought_at from old_sheet " + which,
                ask -> {
                    if (id != null) {
                        ask.setObject(1, id);
                    }
                    return rows(
                            ask,
                            row -> new Kept(
                                    row.getObject(1, UUID.class),
                                    row.getString(2),
                                    row.getObject(3, OffsetDateTime.class),
                                    row.getBoolean(4),
                                    row.getBoolean(5),
                                    row.getObject(6, OffsetDateTime.class)));
                });
    }

    private interface Asking<T> {
        List<T> of(PreparedStatement statement) throws SQLException;
    }

    private interface Row<T> {
        T read(ResultSet row) throws SQLException;
    }

    private <T> List<T> run(String sql, Asking<T> asking) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement statement = connection.prepareStatement(sql)) {
            return asking.of(statement);
        } catch (SQLException cause) {
            throw new IllegalStateException("the old spreadsheets could not be reached", cause);
        }
    }

    private static <T> List<T> rows(PreparedStatement statement, Row<T> reading) throws SQLException {
        List<T> read = new ArrayList<>();
        try (ResultSet row = statement.executeQuery()) {
            while (row.next()) {
                read.add(reading.read(row));
            }
        }
        return read;
    }
}
