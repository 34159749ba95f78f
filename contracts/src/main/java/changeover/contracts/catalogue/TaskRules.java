package changeover.contracts.catalogue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What must be true of every task, shipped or a business's own: all it names exists, every reading can be judged on every
 * kind it is taken on, and what it rests on is said.
 */
public final class TaskRules {

    private static final int LONGEST_MINUTES = 600;

    private TaskRules() {}

    /**
     * Everything that is wrong with it; a reading's fields are named {@code reading-0-unit}, a part's {@code part-0-kind}.
     *
     * @param trade the catalogue that it is to stand in
     */
    public static List<Refusal> of(Task task, Catalogue trade, Climate climate) {
        var checks = new Checks();
        checks.refuseIf(!OwnTasks.isCode(task.code()), "code", "code.shape");
        checks.line("wordingEn", task.wording().en());
        checks.line("wordingFr", task.wording().fr());
        checks.refuseIf(
                task.kinds().isEmpty()
                        || task.kinds().stream()
                                .anyMatch(kind -> trade.findKind(kind).isEmpty()),
                "kinds",
                "own-task.kind-unknown");
        checks.refuseIf(task.minutes() > LONGEST_MINUTES, "minutes", "own-task.minutes");
        checks.refuseIf(
                task.who() == Who.HOUSEHOLD && task.ticket() != TicketNeeded.NONE,
                "ticket",
                "own-task.household-ticket");
        checks.refuseIf(
                task.caution() != null && trade.findCaution(task.caution()).isEmpty(),
                "caution",
                "own-task.caution-unknown");
        checks.refuseIf(
                seasonsOf(task.cadence()).stream()
                        .anyMatch(season -> climate.find(season).isEmpty()),
                "seasons",
                "own-task.season-unknown");
        checks.line("basis", task.basis());
        checks.note("source", task.source());
        checks.refuseIf(
                !task.basis().isBlank()
                        && !task.basis().equals(Task.COMMON_PRACTICE)
                        && (task.source() == null || task.source().isBlank()),
                "source",
                "own-task.source-missing");
        for (int at = 0; at < task.parts().size(); at++) {
            Task.PartUse use = task.parts().get(at);
            checks.refuseIf(trade.findPart(use.part()).isEmpty(), "part-" + at + "-kind", "own-task.part-unknown");
            checks.refuseIf(use.quantity().signum() <= 0, "part-" + at + "-quantity", "own-task.part-quantity");
        }
        for (int at = 0; at < task.readings().size(); at++) {
            judge(task, at, trade, checks);
        }
        return checks.refusals();
    }

    private static void judge(Task task, int at, Catalogue trade, Checks checks) {
        ReadingSpec reading = task.readings().get(at);
        String field = "reading-" + at + "-";
        boolean number = reading.form() == ReadingSpec.Form.NUMBER;
        checks.refuseIf(!OwnTasks.isCode(reading.code()), field + "code", "code.shape");
        checks.refuseIf(
                task.readings().subList(0, at).stream()
                        .anyMatch(earlier -> earlier.code().equals(reading.code())),
                field + "code",
                "own-task.reading-twice");
        words(reading.wording(), field + "en", field + "fr", checks);
        checks.refuseIf(
                number
                        && (reading.unit() == null
                                || UnitOfMeasure.find(reading.unit()).isEmpty()),
                field + "unit",
                "own-task.unit-missing");
        checks.refuseIf(!number && reading.unit() != null, field + "unit", "own-task.unit-without-number");
        both(reading.state(), field + "stateEn", field + "stateFr", checks);
        checks.refuseIf(
                reading.band() instanceof Band.Answer != (reading.form() == ReadingSpec.Form.YES_NO)
                        && reading.band() != null,
                field + "band",
                "own-task.band-form");
        figures(reading.band(), field + "high", field + "percent", checks);
        figures(reading.limit(), field + "limitHigh", field + "limitHigh", checks);
        checks.refuseIf(
                (reading.band() != null || reading.limit() != null) && reading.beyond() == null,
                field + "beyondEn",
                "own-task.beyond-missing");
        both(reading.beyond(), field + "beyondEn", field + "beyondFr", checks);
        checks.refuseIf(
                platesOf(reading.band()).stream()
                        .anyMatch(plate -> task.kinds().stream()
                                .flatMap(kind -> trade.findKind(kind).stream())
                                .anyMatch(kind -> kind.plate(plate).isEmpty())),
                field + "plate",
                "own-task.plate-unknown");
        checks.refuseIf(
                reading.band() instanceof Band.Imbalance(String with, BigDecimal _)
                        && task.reading(with).isEmpty(),
                field + "band",
                "own-task.reading-unknown");
        checks.refuseIf(
                reading.sentence() != null
                        && trade.findSentence(reading.sentence()).isEmpty(),
                field + "code",
                "own-task.sentence-unknown");
    }

    private static void words(Wording words, String english, String french, Checks checks) {
        checks.line(english, words.en());
        checks.line(french, words.fr());
    }

    private static void both(@Nullable Wording words, String english, String french, Checks checks) {
        if (words != null) {
            words(words, english, french, checks);
        }
    }

    private static void figures(@Nullable Band band, String field, String percentField, Checks checks) {
        if (band instanceof Band.Fixed(BigDecimal low, BigDecimal high)) {
            checks.refuseIf(low == null && high == null, field, "own-task.figure-missing");
            checks.refuseIf(low != null && high != null && low.compareTo(high) > 0, field, "own-task.figures-order");
        }
        if (band instanceof Band.PlateTolerance(String _, BigDecimal percent)) {
            checks.refuseIf(percent.signum() <= 0, percentField, "own-task.figure-missing");
        }
    }

    static List<String> seasonsOf(Cadence cadence) {
        return switch (cadence) {
            case Cadence.BeforeSeason(String season, var _) -> List.of(season);
            case Cadence.EachSeason(List<String> seasons) -> seasons;
            case Cadence.EveryMonths _,
                    Cadence.TimesAYear _,
                    Cadence.CheckThenReplace _,
                    Cadence.LookThenChange _,
                    Cadence.OnRequest _ -> List.of();
        };
    }

    static List<String> platesOf(@Nullable Band band) {
        if (band == null) {
            return List.of();
        }
        return switch (band) {
            case Band.PlateTolerance(String plate, BigDecimal _) -> List.of(plate);
            case Band.PlateRange(String low, String high) ->
                Stream.of(low, high).filter(name -> name != null).toList();
            case Band.ElementAmps(String kilowatts, String plateVolts, String _, BigDecimal _) ->
                List.of(kilowatts, plateVolts);
            case Band.ElementOhms(String kilowatts, String plateVolts, BigDecimal _) -> List.of(kilowatts, plateVolts);
            case Band.Fixed _, Band.Answer _, Band.Imbalance _ -> List.of();
        };
    }
}
