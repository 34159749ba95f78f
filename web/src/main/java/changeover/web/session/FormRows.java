package changeover.web.session;

import changeover.contracts.words.Refusal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Rows of a form that may be left blank: {@code reading-2-unit}. What a rule says of the second filled one is said there. */
public final class FormRows {

    private static final Pattern FIELD = Pattern.compile("([a-z]+)-(\\d+)-(\\w+)");

    private final Map<String, List<Integer>> filled = new HashMap<>();

    /** The names of one row's fields. */
    public record Row(String prefix) {

        public String of(String field) {
            return prefix + field;
        }

        public static Row of(String rows, int at) {
            return new Row(rows + "-" + at + "-");
        }
    }

    /** The rows in which something was typed into one of these fields. */
    public List<Row> filled(Typed typed, String rows, int most, List<String> telling) {
        List<Integer> found = IntStream.range(0, most)
                .filter(at -> telling.stream()
                        .anyMatch(
                                field -> !typed.each(Row.of(rows, at).of(field)).isEmpty()))
                .boxed()
                .toList();
        filled.put(rows, found);
        return found.stream().map(at -> Row.of(rows, at)).toList();
    }

    /** The rows to show: those that hold something, and two more. */
    public static List<Row> shown(Said form, String rows, int most) {
        int last = form.values().keySet().stream()
                .map(FIELD::matcher)
                .filter(field -> field.matches() && field.group(1).equals(rows))
                .filter(field -> !form.value(field.group()).isBlank())
                .filter(field -> field.group(2).length() < 3)
                .mapToInt(field -> Integer.parseInt(field.group(2)))
                .max()
                .orElse(-1);
        return IntStream.range(0, Math.min(most, last + 3))
                .mapToObj(at -> Row.of(rows, at))
                .toList();
    }

    /** What a rule says of the so manieth filled row, at the row it was typed into. */
    public List<Refusal> placed(List<Refusal> refusals) {
        return refusals.stream().map(this::placed).toList();
    }

    private Refusal placed(Refusal refusal) {
        var field = FIELD.matcher(refusal.field() == null ? "" : refusal.field());
        if (!field.matches()) {
            return refusal;
        }
        List<Integer> rows = filled.getOrDefault(field.group(1), List.of());
        int at = Integer.parseInt(field.group(2));
        return at < rows.size()
                ? refusal.at(Row.of(field.group(1), rows.get(at)).of(field.group(3)))
                : refusal;
    }
}
