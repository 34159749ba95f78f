package changeover.web.office;

import changeover.contracts.catalogue.Band;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.words.Wording;
import changeover.web.session.FormRows;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One reading of a task as a form's row: its unit, the state it is taken in, what is expected, and what to do outside it. */
final class OwnReadingForm {

    private static final Set<String> FORMS = Set.of("number", "yes-no", "text", "date");
    private static final Set<String> BANDS =
            Set.of("none", "fixed", "answer", "plate-tolerance", "plate-range", "kept");
    private static final long FAR = 1_000_000;

    private OwnReadingForm() {}

    /** @param before the reading of this code as it stood, for what the form cannot write; null when there was none */
    static ReadingSpec read(Typed typed, FormRows.Row row, @Nullable ReadingSpec before) {
        String form = typed.oneOf(row.of("form"), FORMS);
        boolean limited = !typed.each(row.of("limitLow")).isEmpty()
                || !typed.each(row.of("limitHigh")).isEmpty();
        return new ReadingSpec(
                line(typed, row.of("code")),
                new Wording(line(typed, row.of("en")), line(typed, row.of("fr"))),
                ReadingSpec.Form.valueOf(form.replace('-', '_').toUpperCase(Locale.ROOT)),
                typed.line(row.of("unit"), 20),
                words(typed, row.of("stateEn"), row.of("stateFr")),
                band(typed, row, before),
                limited
                        ? new Band.Fixed(figure(typed, row.of("limitLow")), figure(typed, row.of("limitHigh")))
                        : before == null || before.limit() instanceof Band.Fixed ? null : before.limit(),
                words(typed, row.of("beyondEn"), row.of("beyondFr")),
                before == null ? null : before.sentence(),
                before == null ? null : before.asked());
    }

    static void fill(Map<String, List<String>> fields, FormRows.Row row, ReadingSpec reading, Locale locale) {
        put(fields, row.of("code"), reading.code());
        put(fields, row.of("en"), reading.wording().en());
        put(fields, row.of("fr"), reading.wording().fr());
        put(
                fields,
                row.of("form"),
                reading.form().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        put(fields, row.of("unit"), reading.unit());
        Wording state = reading.state();
        put(fields, row.of("stateEn"), state == null ? null : state.en());
        put(fields, row.of("stateFr"), state == null ? null : state.fr());
        Wording beyond = reading.beyond();
        put(fields, row.of("beyondEn"), beyond == null ? null : beyond.en());
        put(fields, row.of("beyondFr"), beyond == null ? null : beyond.fr());
        fill(fields, row, reading.band(), locale);
        if (reading.limit() instanceof Band.Fixed(BigDecimal low, BigDecimal high)) {
            put(fields, row.of("limitLow"), plain(low, locale));
            put(fields, row.of("limitHigh"), plain(high, locale));
        }
    }

    private static void fill(Map<String, List<String>> fields, FormRows.Row row, @Nullable Band band, Locale locale) {
        String kind = switch (band) {
            case null -> "none";
            case Band.Fixed(BigDecimal low, BigDecimal high) -> {
                put(fields, row.of("low"), plain(low, locale));
                put(fields, row.of("high"), plain(high, locale));
                yield "fixed";
            }
            case Band.Answer(boolean yes) -> {
                put(fields, row.of("good"), yes ? "yes" : "no");
                yield "answer";
            }
            case Band.PlateTolerance(String plate, BigDecimal percent) -> {
                put(fields, row.of("plate"), plate);
                put(fields, row.of("percent"), plain(percent, locale));
                yield "plate-tolerance";
            }
            case Band.PlateRange(String low, String high) -> {
                put(fields, row.of("plate"), low);
                put(fields, row.of("plateHigh"), high);
                yield "plate-range";
            }
            case Band.ElementAmps _, Band.ElementOhms _, Band.Imbalance _ -> "kept";
        };
        put(fields, row.of("band"), kind);
    }

    private static @Nullable Band band(Typed typed, FormRows.Row row, @Nullable ReadingSpec before) {
        return switch (typed.oneOf(row.of("band"), BANDS)) {
            case "fixed" -> new Band.Fixed(figure(typed, row.of("low")), figure(typed, row.of("high")));
            case "answer" ->
                new Band.Answer(typed.oneOf(row.of("good"), Set.of("yes", "no")).equals("yes"));
            case "plate-tolerance" ->
                new Band.PlateTolerance(
                        line(typed, row.of("plate")),
                        typed.number(row.of("percent"), BigDecimal.ZERO, BigDecimal.valueOf(100)));
            case "plate-range" ->
                new Band.PlateRange(typed.line(row.of("plate"), 60), typed.line(row.of("plateHigh"), 60));
            case "kept" -> before == null ? null : before.band();
            default -> null;
        };
    }

    private static @Nullable BigDecimal figure(Typed typed, String field) {
        return typed.numberOrNone(field, -FAR, FAR);
    }

    private static @Nullable Wording words(Typed typed, String english, String french) {
        String en = line(typed, english);
        String fr = line(typed, french);
        return en.isEmpty() && fr.isEmpty() ? null : new Wording(en, fr);
    }

    private static String line(Typed typed, String field) {
        String text = typed.line(field, 200);
        return text == null ? "" : text;
    }

    private static @Nullable String plain(@Nullable BigDecimal figure, Locale locale) {
        return figure == null ? null : Written.whole(figure, locale);
    }

    private static void put(Map<String, List<String>> fields, String name, @Nullable String value) {
        fields.put(name, List.of(value == null ? "" : value));
    }
}
