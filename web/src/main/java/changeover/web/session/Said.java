package changeover.web.session;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A form as it is shown: what stands in its fields, and what was said about them. */
public record Said(Map<String, List<String>> values, Map<String, String> errors, List<String> top) {

    /** A form that nobody has typed into yet. */
    public static Said blank() {
        return new Said(Map.of(), Map.of(), List.of());
    }

    /** A form filled from what is known. */
    public static Said filled(Map<String, String> known) {
        var values = new LinkedHashMap<String, List<String>>();
        known.forEach((field, value) -> values.put(field, List.of(value)));
        return new Said(values, Map.of(), List.of());
    }

    /** The form comes back as typed, each sentence at its field and the others above the form. */
    public static Said again(Typed typed, List<Refusal> refusals, Locale locale) {
        var errors = new LinkedHashMap<String, String>();
        var top = new java.util.ArrayList<String>();
        for (Refusal refusal : refusals) {
            String sentence = Refusals.sentence(refusal, locale);
            if (refusal.field() == null) {
                top.add(sentence);
            } else {
                errors.merge(refusal.field(), sentence, (a, b) -> a.contains(b) ? a : a + " " + b);
            }
        }
        return new Said(typed.asTyped(), errors, top);
    }

    /** The same over what else is known: one of many forms comes back as typed, the others stand as they would. */
    public Said over(Map<String, String> filled) {
        var all = new LinkedHashMap<String, List<String>>(filled(filled).values);
        all.putAll(values);
        return new Said(all, errors, top);
    }

    public String value(String field) {
        List<String> all = values.get(field);
        return all == null || all.isEmpty() ? "" : all.getFirst();
    }

    public boolean has(String field, String value) {
        List<String> all = values.get(field);
        return all != null && all.contains(value);
    }

    public String error(String field) {
        return errors.getOrDefault(field, "");
    }

    public boolean refused() {
        return !errors.isEmpty() || !top.isEmpty();
    }
}
