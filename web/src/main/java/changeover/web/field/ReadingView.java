package changeover.web.field;

import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.scheduling.closeout.DaySheet.ReadingLine;
import changeover.scheduling.closeout.Reading;
import changeover.scheduling.closeout.ReportFacts.Last;
import changeover.web.session.ReadingScale;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A reading as it is asked: what it is expected to be, what it was last time, and what the figure that stands says.
 *
 * @param field the form's name for it
 * @param form number, yes_no, text or date
 * @param unit how the unit is written; empty without one
 * @param units the other units it may be taken in, its own first; empty when there is only one
 * @param state the running state it is meant for
 * @param standing below, within, above, not_judged; empty while nothing was said
 * @param edge the end of the band that was passed, in words
 */
public record ReadingView(
        String field,
        String unitField,
        String runningField,
        String form,
        String words,
        String unit,
        List<TaskView.Choice> units,
        String state,
        String expected,
        String scale,
        String last,
        String lastUnit,
        String lastDay,
        String standing,
        boolean off,
        String edge,
        String beyond) {

    /** @param kept the reading that stands on the sheet; null while there is none */
    static ReadingView of(ReadingLine line, @Nullable Reading kept, Locale locale, String lastDay) {
        ReadingSpec spec = line.spec();
        UnitOfMeasure unit = spec.unit() == null ? UnitOfMeasure.ONE : UnitOfMeasure.ofCode(spec.unit());
        boolean number = spec.form() == ReadingSpec.Form.NUMBER;
        BigDecimal low = kept == null ? line.low() : in(unit, kept, kept.low().orElse(null));
        BigDecimal high =
                kept == null ? line.high() : in(unit, kept, kept.high().orElse(null));
        BigDecimal value = kept == null ? null : in(unit, kept, kept.value().orElse(null));
        String standing = kept == null ? "" : kept.standing();
        BigDecimal passed = standing.equals("below") ? low : standing.equals("above") ? high : null;
        Last last = line.last();
        return new ReadingView(
                "reading." + spec.code(),
                "unit." + spec.code(),
                "running." + spec.code(),
                spec.form().name().toLowerCase(Locale.ROOT),
                spec.wording().in(locale),
                unit.symbol().in(locale),
                number ? units(unit, locale) : List.of(),
                spec.state() == null ? "" : spec.state().in(locale),
                number ? ReadingScale.expected(low, high, locale) : "",
                number && (low != null || high != null)
                        ? ReadingScale.svg(
                                "scale-" + spec.code(), spec.wording().in(locale), low, high, value, locale)
                        : "",
                last == null ? "" : last.entered(),
                last == null || last.enteredUnit() == null
                        ? ""
                        : UnitOfMeasure.ofCode(last.enteredUnit()).symbol().in(locale),
                lastDay,
                standing,
                kept != null && kept.actOn(),
                passed == null ? "" : ReadingScale.figure(passed, locale),
                kept == null ? "" : kept.beyond().map(words -> words.in(locale)).orElse(""));
    }

    private static List<TaskView.Choice> units(UnitOfMeasure own, Locale locale) {
        List<TaskView.Choice> others = Arrays.stream(UnitOfMeasure.values())
                .filter(unit -> own.convertsTo(unit))
                .sorted(java.util.Comparator.comparing(unit -> unit != own))
                .map(unit -> new TaskView.Choice(unit.code(), unit.symbol().in(locale)))
                .toList();
        return others.size() > 1 ? others : List.of();
    }

    private static @Nullable BigDecimal in(UnitOfMeasure unit, Reading kept, @Nullable BigDecimal value) {
        if (value == null || kept.unit().isEmpty()) {
            return null;
        }
        BigDecimal there = UnitOfMeasure.ofCode(kept.unit().get()).convert(value, unit);
        BigDecimal round = there.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return round.scale() < 0 ? round.setScale(0) : round;
    }
}
