package changeover.web.api;

import changeover.contracts.catalogue.Interval;
import changeover.contracts.words.Wording;
import changeover.scheduling.households.FilterLooks;
import changeover.scheduling.households.SlotRhythm;
import changeover.scheduling.intervals.HouseholdInterval;
import changeover.scheduling.intervals.Rhythm;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A filter slot's own rhythm as the API says it: what was seen, what is recommended, and what the household's list follows.
 *
 * @param follows {@code word}, {@code learned} or {@code sold}
 * @param word what a person decided; null when nobody did
 * @param otherHomes how many other homes the belief before any sight comes from
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record RhythmDocument(
        UUID machine,
        String name,
        String size,
        String thickness,
        String rating,
        Wording sentence,
        String follows,
        @Nullable Word word,
        Advice recommended,
        BigDecimal acceptedChance,
        int longestDays,
        Wording longestBasis,
        int otherHomes,
        BigDecimal shape,
        BigDecimal scaleDays,
        BigDecimal meanDays,
        List<Told> seen,
        List<Point> curve) {

    /** Days since the last change, and the chances that go with them. */
    record Advice(
            int lookAfterDays,
            String lookHeldBy,
            int changeAfterDays,
            String changeHeldBy,
            BigDecimal chanceGreyAtLook,
            BigDecimal chanceGreyBetweenLookAndChange) {}

    /**
     * @param cadence as the catalogue's are written
     * @param by who decided; null where a label or a manual says so
     */
    record Word(
            String cadence,
            String why,
            @Nullable String by,
            @Nullable LocalDate on,
            @Nullable String source) {

        static Word of(Interval word) {
            Interval.Decided decided = word.decided();
            return new Word(
                    word.cadence().json(),
                    word.basis(),
                    decided == null ? null : decided.by(),
                    decided == null ? null : decided.on(),
                    word.source());
        }
    }

    /** @param id of what may be taken back */
    record Told(
            @Nullable UUID id,
            LocalDate day,
            String by,
            String name,
            String what,
            @Nullable UUID visit) {}

    record Point(BigDecimal days, BigDecimal chanceGrey, BigDecimal low, BigDecimal high) {}

    static RhythmDocument of(SlotRhythm rhythm) {
        HouseholdInterval learned = rhythm.learned();
        var word = rhythm.seen().word();
        return new RhythmDocument(
                rhythm.slot().id(),
                rhythm.slot().name(),
                rhythm.slot().size(),
                rhythm.slot().thickness(),
                rhythm.slot().rating(),
                learned.sentence(),
                lower(rhythm.seen().follows()),
                word == null ? null : Word.of(word),
                advice(learned.rhythm()),
                rounded(learned.setting(), 2),
                learned.limits().capDays(),
                learned.limits().basis(),
                rhythm.others(),
                rounded(learned.likeliest().shape(), 4),
                rounded(learned.likeliest().scaleDays(), 2),
                rounded(learned.likeliest().meanDays(), 2),
                rhythm.seen().told().stream().map(RhythmDocument::told).toList(),
                learned.curve().stream()
                        .map(point -> new Point(
                                rounded(point.days(), 2),
                                rounded(point.chanceGrey(), 4),
                                rounded(point.low(), 4),
                                rounded(point.high(), 4)))
                        .toList());
    }

    private static Advice advice(Rhythm rhythm) {
        return new Advice(
                rhythm.checkAfterDays(),
                lower(rhythm.checkHeldBy()),
                rhythm.changeAfterDays(),
                lower(rhythm.changeHeldBy()),
                rounded(rhythm.chanceAtCheck(), 4),
                rounded(rhythm.chanceAfterCheck(), 4));
    }

    private static Told told(FilterLooks.Told told) {
        return new Told(
                told.id(),
                told.look().day(),
                lower(told.look().by()),
                told.name(),
                lower(told.look().what()).replace('_', '-'),
                told.visitId());
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
