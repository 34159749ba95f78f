package changeover.contracts.tenants;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGStatement;

/**
 * Very many rows that have much in common go into a table by one statement. What rows share (a wording, a window, a
 * reason) is sent once and numbered; ids are sent once each; a row is then a few numbers, and the database writes it out.
 *
 * @param <S> what rows share; equal ones are sent once
 */
public final class SharedRows<S> {

    private final String table;
    private final List<String> ids;
    private final List<String> numbers;
    private final List<String> names;
    private final List<String> types;

    private final List<Map<UUID, Integer>> knownIds = new ArrayList<>();
    private final List<Numbers> columns = new ArrayList<>();
    private final Map<S, Integer> known = new HashMap<>();
    private final List<List<@Nullable Object>> shared = new ArrayList<>();

    /** How what is shared is written: its values in the order of the shared columns. */
    public interface Written<S> {
        @Nullable
        Object[] values(S said);
    }

    private final Written<S> written;

    /** {@code SharedRows.into("visit_task", "visit_id, equipment_id", "position", "task_code text, minutes int", …)}. */
    public static <S> SharedRows<S> into(String table, String ids, String numbers, String shared, Written<S> written) {
        return new SharedRows<>(table, names(ids), names(numbers), names(shared), written);
    }

    private SharedRows(
            String table, List<String> ids, List<String> numbers, List<String> declared, Written<S> written) {
        this.table = table;
        this.ids = ids;
        this.numbers = numbers;
        this.names = declared.stream().map(one -> one.split(" ")[0]).toList();
        this.types = declared.stream().map(one -> one.split(" ")[1]).toList();
        this.written = written;
        ids.forEach(_ -> knownIds.add(new LinkedHashMap<>()));
        IntStream.rangeClosed(0, ids.size() + numbers.size()).forEach(_ -> columns.add(new Numbers()));
        names.forEach(_ -> shared.add(new ArrayList<>()));
    }

    private static List<String> names(String list) {
        return list.isEmpty() ? List.of() : Arrays.asList(list.split(",\\s*"));
    }

    /** One row: its ids, null where it has none, and its numbers, each in the order of the columns. */
    public void add(S said, @Nullable UUID[] rowIds, int... rowNumbers) {
        for (int at = 0; at < rowIds.length; at++) {
            UUID id = rowIds[at];
            Map<UUID, Integer> seen = knownIds.get(at);
            columns.get(at).add(id == null ? 0 : seen.computeIfAbsent(id, _ -> seen.size() + 1));
        }
        for (int at = 0; at < rowNumbers.length; at++) {
            columns.get(ids.size() + at).add(rowNumbers[at]);
        }
        columns.getLast().add(known.computeIfAbsent(said, this::write));
    }

    private int write(S said) {
        @Nullable Object[] values = written.values(said);
        for (int at = 0; at < values.length; at++) {
            shared.get(at).add(values[at]);
        }
        return shared.getFirst().size();
    }

    public int size() {
        return columns.getLast().size();
    }

    /** Stores them; nothing is sent when there are none. */
    public void store(Connection connection) throws SQLException {
        if (size() == 0) {
            return;
        }
        try (var insert = connection.prepareStatement(sql())) {
            planForTheseArrays(insert);
            int at = 1;
            for (Map<UUID, Integer> seen : knownIds) {
                array(insert, at++, "uuid", seen.keySet().stream());
            }
            for (Numbers column : columns) {
                insert.setObject(at++, column.toArray());
            }
            for (int column = 0; column < types.size(); column++) {
                array(insert, at++, types.get(column), shared.get(column).stream());
            }
            insert.executeUpdate();
        }
    }

    /**
     * A plan kept for any arrays would not know how long they are. The setting {@code plan_cache_mode} would say so too,
     * but then the database plans each of its foreign-key checks anew, which costs more than all the rest.
     */
    private static void planForTheseArrays(PreparedStatement insert) throws SQLException {
        insert.unwrap(PGStatement.class).setPrepareThreshold(0);
    }

    private String sql() {
        String picked = Stream.of(
                        IntStream.range(0, ids.size()).mapToObj(at -> "(?::uuid[])[r.n" + at + "]"),
                        IntStream.range(0, numbers.size()).mapToObj(at -> "r.n" + (ids.size() + at)),
                        names.stream().map(name -> "s." + name))
                .flatMap(one -> one)
                .collect(Collectors.joining(", "));
        String rowColumns =
                IntStream.range(0, columns.size()).mapToObj(at -> "n" + at).collect(Collectors.joining(", "));
        return "insert into " + table + " ("
                + Stream.of(ids, numbers, names).flatMap(List::stream).collect(Collectors.joining(", "))
                + ") select " + picked
                + " from unnest(" + "?::int[], ".repeat(columns.size() - 1) + "?::int[]) as r(" + rowColumns + ")"
                + " join unnest("
                + types.stream().map(type -> "?::" + type + "[]").collect(Collectors.joining(", "))
                + ") with ordinality as s(" + String.join(", ", names) + ", nth)"
                + " on s.nth = r.n" + (columns.size() - 1);
    }

    private static void array(PreparedStatement insert, int at, String type, Stream<? extends @Nullable Object> values)
            throws SQLException {
        Object[] said =
                values.map(value -> value == null ? null : value.toString()).toArray();
        insert.setArray(at, insert.getConnection().createArrayOf(type, said));
    }

    /** A column of whole numbers that grows. */
    private static final class Numbers {

        private int[] numbers = new int[256];
        private int size;

        void add(int number) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, size * 2);
            }
            numbers[size++] = number;
        }

        int size() {
            return size;
        }

        int[] toArray() {
            return Arrays.copyOf(numbers, size);
        }
    }
}
