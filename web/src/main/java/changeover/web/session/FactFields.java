package changeover.web.session;

import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.contracts.words.Refusal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The fields of a machine's form, made from its kind's data: a kind added as data has its form at once. */
public record FactFields(List<Field> fits, List<Field> plate) {

    private static final String FITS = "fits.";
    private static final String PLATE = "plate.";
    private static final int LONGEST = 120;

    /**
     * One field.
     *
     * @param form text, number, choice or date
     * @param unit the unit's sign, or empty
     */
    public record Field(String name, String words, String form, String unit, List<Option> options) {}

    public record Option(String value, String words) {}

    public static FactFields of(Kind kind, Locale locale) {
        return new FactFields(fields(FITS, kind.fits(), locale), fields(PLATE, kind.nameplate(), locale));
    }

    private static List<Field> fields(String prefix, List<Fact> facts, Locale locale) {
        return facts.stream()
                .map(fact -> new Field(
                        prefix + fact.name(),
                        capital(fact.wording().in(locale), locale),
                        fact.form().name().toLowerCase(Locale.ROOT),
                        fact.unit() == null
                                ? ""
                                : UnitOfMeasure.ofCode(fact.unit()).symbol().in(locale),
                        fact.choices().stream()
                                .map(choice -> new Option(
                                        choice.value(), choice.wording().in(locale)))
                                .toList()))
                .toList();
    }

    private static String capital(String text, Locale locale) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(locale) + text.substring(1);
    }

    public static Map<String, String> fitsOf(Kind kind, Typed typed) {
        return read(FITS, kind.fits(), typed);
    }

    public static Map<String, String> plateOf(Kind kind, Typed typed) {
        return read(PLATE, kind.nameplate(), typed);
    }

    /** The form's field of a fact that a refusal names as the register does. */
    public static String fieldOf(String place) {
        return place.startsWith("nameplate.") ? PLATE + place.substring("nameplate.".length()) : place;
    }

    /** What is known of the machine, as the form's fields. */
    public static Map<String, String> filled(Map<String, String> fits, Map<String, String> plate) {
        var fields = new LinkedHashMap<String, String>();
        fits.forEach((name, value) -> fields.put(FITS + name, value));
        plate.forEach((name, value) -> fields.put(PLATE + name, value));
        return fields;
    }

    private static Map<String, String> read(String prefix, List<Fact> facts, Typed typed) {
        var values = new LinkedHashMap<String, String>();
        for (Fact fact : facts) {
            String value = typed.line(prefix + fact.name(), LONGEST);
            if (value == null) {
                continue;
            }
            String plain = fact.form() == Fact.Form.NUMBER ? value.replace(',', '.') : value;
            if (!fact.allows(plain)) {
                typed.refuse(Refusal.of(refusal(fact)).at(prefix + fact.name()));
            }
            values.put(fact.name(), plain);
        }
        return values;
    }

    private static String refusal(Fact fact) {
        return switch (fact.form()) {
            case NUMBER -> "typed.number";
            case CHOICE -> "typed.choose";
            case DATE -> "machine.month-or-day";
            case TEXT -> "typed.text";
        };
    }
}
