package changeover.web.office;

import changeover.contracts.oldsheet.DayOrder;
import changeover.contracts.oldsheet.SheetField;
import changeover.contracts.oldsheet.SheetImport;
import changeover.contracts.oldsheet.SheetLook;
import changeover.contracts.oldsheet.SheetReading;
import changeover.contracts.oldsheet.SheetTable;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What a person said of an old spreadsheet: {@code column-3}, {@code kind-0} beside {@code kindWord-0}, and the rest by name. */
final class SheetForm {

    /** Words of one sort that a page asks for. */
    static final int MOST_WORDS = 60;

    private static final int LONGEST_WORD = 200;

    private SheetForm() {}

    /** @throws changeover.contracts.words.Refused with every field that was not understood */
    static SheetReading reading(Typed typed, SheetTable table, SheetLook.Ground ground) {
        Set<String> plans = ground.plans().stream().map(PlanFacts::code).collect(Collectors.toSet());
        Map<String, String> columns = new LinkedHashMap<>();
        Set<String> fields = withNone(
                Arrays.stream(SheetField.values()).map(SheetField::code).collect(Collectors.toSet()));
        for (int place = 0; place < table.titles().size(); place++) {
            columns.put(table.titles().get(place), typed.oneOf("column-" + place, fields));
        }
        String order = typed.oneOf(
                "dayOrder",
                withNone(Arrays.stream(DayOrder.values()).map(DayOrder::code).collect(Collectors.toSet())));
        String plan = typed.oneOf("plan", withNone(plans));
        Set<String> kinds =
                ground.catalogue().kinds().stream().map(kind -> kind.code()).collect(Collectors.toSet());
        var reading = new SheetReading(
                columns,
                order.isEmpty() ? null : order,
                region(typed, ground.country()),
                typed.oneOf("language", Set.of("en", "fr")),
                plan.isEmpty() ? null : plan,
                typed.oneOf("rest", Set.of("old", "ask")).equals("ask"),
                words(typed, "kind", kinds),
                words(typed, "plan", plans));
        reading.refusals(table).forEach(typed::refuse);
        typed.understood();
        return reading;
    }

    /** A word that nobody named is not kept: it may be named later. */
    private static Map<String, String> words(Typed typed, String what, Set<String> codes) {
        Map<String, String> words = new HashMap<>();
        for (int at = 0; at < MOST_WORDS; at++) {
            String word = Folded.of(typed.line(what + "Word-" + at, LONGEST_WORD));
            String code = typed.line(what + "-" + at, LONGEST_WORD);
            if (!word.isEmpty() && code != null) {
                if (code.equals("none")) {
                    words.put(word, "");
                } else if (codes.contains(code)) {
                    words.put(word, code);
                } else {
                    typed.refuse(Refusal.of("typed.choose").at(what + "-" + at));
                }
            }
        }
        return words;
    }

    private static String region(Typed typed, String country) {
        String said = typed.text("region", 60);
        return SheetReading.regionOf(said, country).orElseGet(() -> {
            if (!said.isEmpty()) {
                typed.refuse(Refusal.of("oldsheet.region-known").at("region"));
            }
            return said;
        });
    }

    private static Set<String> withNone(Set<String> codes) {
        Set<String> all = new HashSet<>(codes);
        all.add("");
        return all;
    }

    /** The form as the kept reading fills it. */
    static Said said(SheetImport.Looked looked) {
        SheetReading reading = looked.reading();
        Map<String, String> known = new HashMap<>();
        for (int place = 0; place < looked.table().titles().size(); place++) {
            known.put(
                    "column-" + place,
                    reading.columns().getOrDefault(looked.table().titles().get(place), ""));
        }
        known.put("dayOrder", reading.dayOrder() == null ? "" : reading.dayOrder());
        known.put("region", reading.region());
        known.put("language", reading.language());
        known.put("plan", reading.plan() == null ? "" : reading.plan());
        known.put("rest", reading.asksTheRest() ? "ask" : "old");
        known.put("takeOver", looked.day().toString());
        words(known, "kind", looked.look().kinds(), reading.kinds());
        words(known, "plan", looked.look().plans(), reading.plans());
        return Said.filled(known);
    }

    private static void words(
            Map<String, String> known, String what, Map<String, String> asked, Map<String, String> said) {
        int at = 0;
        for (String word : asked.keySet()) {
            String code = said.get(word);
            known.put(what + "-" + at++, code == null ? "" : code.isEmpty() ? "none" : code);
        }
    }
}
