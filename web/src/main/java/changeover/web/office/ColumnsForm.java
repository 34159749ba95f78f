package changeover.web.office;

import changeover.billing.bank.Columns;
import changeover.billing.bank.DayStyle;
import changeover.contracts.words.Refusal;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import jakarta.ws.rs.core.MultivaluedHashMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a person typed about the columns of a bank's table. */
record ColumnsForm(
        @Nullable String separator,
        @Nullable String headRows,
        @Nullable String dayColumn,
        @Nullable String dayStyle,
        @Nullable String amountColumn,
        @Nullable String outColumn,
        @Nullable String decimalComma,
        @Nullable String wordsColumns,
        @Nullable String referenceColumn,
        @Nullable String kindColumn) {

    private static final int MOST_COLUMNS = 50;
    private static final Map<String, Character> SEPARATORS =
            Map.of("comma", ',', "semicolon", ';', "tab", '\t', "bar", '|');

    /** Whether nobody said yet which column holds the day. */
    boolean isEmpty() {
        return dayColumn == null || dayColumn.isBlank();
    }

    Typed typed() {
        var fields = new MultivaluedHashMap<String, String>();
        put(fields, "separator", separator);
        put(fields, "headRows", headRows);
        put(fields, "dayColumn", dayColumn);
        put(fields, "dayStyle", dayStyle);
        put(fields, "amountColumn", amountColumn);
        put(fields, "outColumn", outColumn);
        put(fields, "decimalComma", decimalComma);
        put(fields, "wordsColumns", wordsColumns);
        put(fields, "referenceColumn", referenceColumn);
        put(fields, "kindColumn", kindColumn);
        return new Typed(fields);
    }

    private static void put(MultivaluedHashMap<String, String> fields, String name, @Nullable String value) {
        if (value != null) {
            fields.putSingle(name, value);
        }
    }

    /** @throws changeover.contracts.words.Refused with every field that was not understood */
    Columns columns(Typed typed) {
        Character between = SEPARATORS.get(typed.oneOf("separator", SEPARATORS.keySet()));
        Set<String> styles =
                Arrays.stream(DayStyle.values()).map(DayStyle::code).collect(Collectors.toSet());
        int head = typed.whole("headRows", 0, 20);
        int day = typed.whole("dayColumn", 1, MOST_COLUMNS);
        DayStyle style = DayStyle.of(typed.oneOf("dayStyle", styles)).orElseThrow();
        int amount = typed.whole("amountColumn", 1, MOST_COLUMNS);
        @Nullable Integer out = columnOrNone(typed, "outColumn");
        @Nullable Integer reference = columnOrNone(typed, "referenceColumn");
        @Nullable Integer kind = columnOrNone(typed, "kindColumn");
        List<Integer> words = numbers(typed);
        typed.understood();
        return new Columns(
                between == null ? ',' : between,
                head,
                day,
                style,
                amount,
                out,
                typed.ticked("decimalComma"),
                words,
                reference,
                kind);
    }

    private static @Nullable Integer columnOrNone(Typed typed, String field) {
        return typed.line(field, 4) == null ? null : typed.whole(field, 1, MOST_COLUMNS);
    }

    private static List<Integer> numbers(Typed typed) {
        List<Integer> numbers = new ArrayList<>();
        for (String one : typed.text("wordsColumns", 60).split("[ ,;]+")) {
            if (one.matches("[1-9]|[1-4][0-9]|50")) {
                numbers.add(Integer.valueOf(one));
            } else if (!one.isEmpty()) {
                typed.refuse(Refusal.of("typed.number").at("wordsColumns"));
            }
        }
        return numbers;
    }

    static Said said(@Nullable Columns columns) {
        if (columns == null) {
            return Said.blank();
        }
        Map<String, String> known = new HashMap<>();
        SEPARATORS.forEach((word, letter) -> {
            if (letter == columns.separator()) {
                known.put("separator", word);
            }
        });
        known.put("headRows", String.valueOf(columns.headRows()));
        known.put("dayColumn", String.valueOf(columns.dayColumn()));
        known.put("dayStyle", columns.dayStyle().code());
        known.put("amountColumn", String.valueOf(columns.amountColumn()));
        known.put("outColumn", said(columns.outColumn()));
        known.put("decimalComma", columns.decimalComma() ? "yes" : "");
        known.put(
                "wordsColumns",
                columns.wordsColumns().stream().map(String::valueOf).collect(Collectors.joining(", ")));
        known.put("referenceColumn", said(columns.referenceColumn()));
        known.put("kindColumn", said(columns.kindColumn()));
        return Said.filled(known);
    }

    private static String said(@Nullable Integer column) {
        return column == null ? "" : column.toString();
    }
}
