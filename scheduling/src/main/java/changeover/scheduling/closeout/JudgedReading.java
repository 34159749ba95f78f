package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Circumstances;
import changeover.contracts.catalogue.Measure;
import changeover.contracts.catalogue.ReadingRule;
import changeover.contracts.catalogue.ReadingRule.Judgement;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Standing;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.Operation.Measured;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A reading as it is kept: in the base unit of its quantity, beside what was typed, with where it stands against the band
 * that this machine's plate and the other readings of the same task give.
 *
 * @param beyond what to do, when it is to be acted on
 */
record JudgedReading(
        UUID id,
        UUID task,
        @Nullable UUID equipment,
        String code,
        @Nullable BigDecimal value,
        @Nullable String unit,
        String enteredValue,
        @Nullable String enteredUnit,
        @Nullable String running,
        @Nullable BigDecimal volts,
        @Nullable BigDecimal low,
        @Nullable BigDecimal high,
        String standing,
        boolean actOn,
        @Nullable Wording beyond,
        @Nullable UUID instrument) {

    private static final int DECIMALS = 6;

    /** Every reading that stands on the sheet. */
    static List<JudgedReading> of(VisitAtHand visit, Sheet sheet) {
        return sheet
                .each(
                        Measured.class,
                        (taken, measured) -> visit.task(measured.task())
                                .flatMap(task -> task.reading(measured.code())
                                        .map(spec -> judged(taken.id(), spec, measured, task, visit, sheet))))
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static JudgedReading judged(
            UUID id, ReadingSpec spec, Measured measured, TaskAtHand task, VisitAtHand visit, Sheet sheet) {
        return switch (spec.form()) {
            case NUMBER -> number(id, spec, measured, task, visit, sheet);
            case YES_NO -> asTyped(id, spec, measured, task, ReadingRule.judge(spec, "yes".equals(measured.value())));
            case TEXT, DATE -> asTyped(id, spec, measured, task, new Judgement(Standing.NOT_JUDGED, null, false));
        };
    }

    private static JudgedReading number(
            UUID id, ReadingSpec spec, Measured measured, TaskAtHand task, VisitAtHand visit, Sheet sheet) {
        Measure measure = measure(spec, measured);
        UnitOfMeasure own = unit(spec, null);
        UnitOfMeasure base = base(own);
        Judgement judgement = ranOtherwise(spec, measured)
                ? new Judgement(Standing.NOT_JUDGED, null, false)
                : ReadingRule.judge(
                        spec,
                        measure,
                        Circumstances.of(visit.nameplate(task.equipment()), others(measured, task, sheet)));
        var expected = judgement.expected();
        return new JudgedReading(
                id,
                measured.task(),
                task.equipment(),
                measured.code(),
                kept(measure.in(base)),
                base.code(),
                measured.value(),
                measure.unit().code(),
                measured.running(),
                measured.volts(),
                expected == null || expected.low() == null ? null : kept(own.convert(expected.low(), base)),
                expected == null || expected.high() == null ? null : kept(own.convert(expected.high(), base)),
                judgement.standing().code(),
                judgement.actOn(),
                judgement.actOn() ? spec.beyond() : null,
                measured.instrument());
    }

    /** A band holds for the running state it was written for; a figure taken in another is kept, not judged. */
    private static boolean ranOtherwise(ReadingSpec spec, Measured measured) {
        String running = measured.running();
        Wording meant = spec.state();
        return running != null
                && meant != null
                && !running.equalsIgnoreCase(meant.en())
                && !running.equalsIgnoreCase(meant.fr());
    }

    private static JudgedReading asTyped(
            UUID id, ReadingSpec spec, Measured measured, TaskAtHand task, Judgement judgement) {
        return new JudgedReading(
                id,
                measured.task(),
                task.equipment(),
                measured.code(),
                null,
                null,
                measured.value(),
                null,
                measured.running(),
                measured.volts(),
                null,
                null,
                judgement.standing().code(),
                judgement.actOn(),
                judgement.actOn() ? spec.beyond() : null,
                measured.instrument());
    }

    /** The other numbers of the task; volts measured beside this very reading outrank a reading of volts. */
    private static Map<String, Measure> others(Measured of, TaskAtHand task, Sheet sheet) {
        Map<String, Measure> others = new HashMap<>();
        sheet.each(Measured.class, (_, other) -> other).stream()
                .filter(other -> other.task().equals(of.task()))
                .forEach(other -> task.reading(other.code())
                        .filter(spec -> spec.form() == ReadingSpec.Form.NUMBER)
                        .ifPresent(spec -> others.put(other.code(), measure(spec, other))));
        BigDecimal volts = of.volts();
        if (volts != null) {
            task.readings().stream()
                    .filter(spec -> UnitOfMeasure.VOLT.code().equals(spec.unit()))
                    .forEach(spec -> others.put(spec.code(), new Measure(volts, UnitOfMeasure.VOLT)));
        }
        return others;
    }

    private static Measure measure(ReadingSpec spec, Measured measured) {
        return new Measure(Body.typed(measured.value()).orElse(BigDecimal.ZERO), unit(spec, measured.unit()));
    }

    private static UnitOfMeasure unit(ReadingSpec spec, @Nullable String said) {
        String code = said != null ? said : spec.unit() != null ? spec.unit() : UnitOfMeasure.ONE.code();
        return UnitOfMeasure.ofCode(code);
    }

    /** What the quantity is kept in; a share is kept in parts per million. */
    private static UnitOfMeasure base(UnitOfMeasure unit) {
        return switch (unit.quantity()) {
            case TEMPERATURE -> UnitOfMeasure.CELSIUS;
            case TEMPERATURE_DIFFERENCE -> UnitOfMeasure.KELVIN_APART;
            case CURRENT -> UnitOfMeasure.AMPERE;
            case VOLTAGE -> UnitOfMeasure.VOLT;
            case RESISTANCE -> UnitOfMeasure.OHM;
            case CAPACITANCE -> UnitOfMeasure.MICROFARAD;
            case POWER -> UnitOfMeasure.WATT;
            case PRESSURE -> UnitOfMeasure.PASCAL;
            case FLOW -> UnitOfMeasure.LITRE_PER_SECOND;
            case SHARE -> UnitOfMeasure.PART_PER_MILLION;
            case LENGTH -> UnitOfMeasure.METRE;
            case VOLUME -> UnitOfMeasure.LITRE;
            case MASS -> UnitOfMeasure.KILOGRAM;
            case DURATION -> UnitOfMeasure.MINUTE;
            case COUNT -> UnitOfMeasure.ONE;
        };
    }

    private static BigDecimal kept(BigDecimal value) {
        return value.setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
