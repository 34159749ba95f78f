package changeover.contracts.oldsheet;

import changeover.contracts.words.Refusal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How an old spreadsheet is read, named once and kept: which column says what, and what its words mean.
 *
 * @param columns by title, the field's code, or empty for a column that is left out
 * @param dayOrder what stands first in a day of three numbers; null until a person said it
 * @param region of homes whose province is not written
 * @param language of customers whose language is not written
 * @param plan of agreements that name none; null for none
 * @param asksTheRest whether what is not paid is still to be invoiced; else the old books did
 * @param kinds what a folded word means: a code of the catalogue, or empty for what is read at the first visit
 * @param plans what a folded word means: a plan's code, or empty for no agreement
 */
public record SheetReading(
        Map<String, String> columns,
        @Nullable String dayOrder,
        String region,
        String language,
        @Nullable String plan,
        boolean asksTheRest,
        Map<String, String> kinds,
        Map<String, String> plans) {

    public SheetReading {
        columns = Map.copyOf(columns);
        kinds = Map.copyOf(kinds);
        plans = Map.copyOf(plans);
    }

    /** A first reading by the titles, for a person to correct. */
    static SheetReading guessed(SheetTable table, String region, String language) {
        var none = new SheetReading(Map.of(), null, region, language, null, false, Map.of(), Map.of());
        return none.over(table);
    }

    /** What is known of these titles, and a guess for those that nobody named yet. */
    SheetReading over(SheetTable table) {
        Map<String, String> named = new LinkedHashMap<>();
        Set<SheetField> taken = new HashSet<>();
        for (String title : table.titles()) {
            String known = columns.get(title);
            if (known != null) {
                named.put(title, known);
                SheetField.of(known).ifPresent(taken::add);
            }
        }
        for (String title : table.titles()) {
            SheetField.titled(title)
                    .filter(field -> !columns.containsKey(title))
                    .filter(field -> taken.add(field) || field.joins())
                    .ifPresent(field -> named.put(title, field.code()));
        }
        return new SheetReading(named, dayOrder, region, language, plan, asksTheRest, kinds, plans);
    }

    /** The code of a province as somebody wrote it; empty for none that is known. */
    public static Optional<String> regionOf(String said, String country) {
        return WrittenWords.region(said, country);
    }

    /** Whatever forbids reading by these columns, in the order of the file. */
    public List<Refusal> refusals(SheetTable table) {
        Map<SheetField, List<Integer>> places = places(table);
        List<Refusal> refusals = new ArrayList<>();
        places.forEach((field, columns) -> {
            if (columns.size() > 1 && !field.joins()) {
                refusals.add(Refusal.of("oldsheet.column-twice", Map.of("field", field.wording()))
                        .at("column-" + columns.get(1)));
            }
        });
        for (SheetField field : List.of(SheetField.NAME, SheetField.STREET, SheetField.CITY)) {
            if (!places.containsKey(field)) {
                refusals.add(Refusal.of("oldsheet." + field.code() + "-column"));
            }
        }
        return refusals;
    }

    Optional<DayOrder> order() {
        return dayOrder == null ? Optional.empty() : DayOrder.of(dayOrder);
    }

    /** The places of each field's columns, in the order of the file. */
    Map<SheetField, List<Integer>> places(SheetTable table) {
        Map<SheetField, List<Integer>> places = new EnumMap<>(SheetField.class);
        for (int at = 0; at < table.titles().size(); at++) {
            String code = columns.get(table.titles().get(at));
            int place = at;
            if (code != null) {
                SheetField.of(code)
                        .ifPresent(field -> places.computeIfAbsent(field, _ -> new ArrayList<>())
                                .add(place));
            }
        }
        return places;
    }
}
