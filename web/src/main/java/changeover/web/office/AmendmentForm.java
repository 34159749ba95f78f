package changeover.web.office;

import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.closeout.StopLines;
import changeover.web.session.FindingTyped;
import changeover.web.session.Typed;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A correction as it is typed: what is written otherwise than it stands becomes an operation; what is the same is not said again. */
final class AmendmentForm {

    private static final int LINE = 200;
    private static final int WORDS = 2000;
    private static final Set<String> OUTCOMES = Set.of("done", "not_applicable", "deferred");

    private final StopLines.Lines lines;
    private final CorrectedTimes times;
    private final CorrectedParts parts;

    AmendmentForm(StopLines.Lines lines, CorrectedTimes times, CorrectedParts parts) {
        this.lines = lines;
        this.times = times;
        this.parts = parts;
    }

    /** What stands, as the form shows it. */
    Map<String, String> known() {
        Map<String, String> known = new LinkedHashMap<>();
        known.put("level", FindingTyped.NOTHING);
        last("minutes").ifPresent(said -> {
            known.put("minutes", text(said, "minutes"));
            known.put("extra", text(said, "extra"));
            known.put("extraWhy", text(said, "extraWhy"));
        });
        last("received").ifPresent(said -> known.put("received", text(said, "by")));
        last("note").ifPresent(said -> known.put("note", text(said, "text")));
        times.known(known);
        parts.known(known);
        for (DaySheet.TaskLine task : lines.tasks()) {
            outcome(task.id()).ifPresent(said -> {
                known.put("outcome." + task.id(), text(said, "outcome"));
                known.put("reason." + task.id(), text(said, "reason"));
            });
            task.readings()
                    .forEach(line -> reading(task.id(), line.spec().code())
                            .ifPresent(said ->
                                    known.put(field(task.id(), line.spec().code()), text(said, "value"))));
        }
        return known;
    }

    static String field(UUID task, String reading) {
        return "reading." + task + "." + reading;
    }

    /**
     * The operations that make what was typed true.
     *
     * @param form the id that was made with the page
     */
    CorrectionTold read(Typed typed, UUID form, Instant at) {
        var told = new CorrectionTold(form, at);
        Map<String, String> known = known();
        times.read(typed, known, told, at);
        if (otherwise(typed, known, "minutes")
                || otherwise(typed, known, "extra")
                || typed.asTyped().containsKey("extraWhy") && otherwise(typed, known, "extraWhy")) {
            int extra = typed.line("extra", LINE) == null ? 0 : typed.whole("extra", 0, 1440);
            told.add(
                    new Operation.MinutesTold(typed.whole("minutes", 0, 1440), extra, extraWhy(typed, known)),
                    member -> member.isEmpty() ? "minutes" : member);
        }
        if (otherwise(typed, known, "received") && typed.line("received", LINE) != null) {
            told.add(new Operation.Received(typed.line("received", LINE), null), _ -> "received");
        }
        if (otherwise(typed, known, "note") && typed.line("note", WORDS) != null) {
            told.add(new Operation.HouseholdNote(typed.text("note", WORDS)), _ -> "note");
        }
        lines.tasks().forEach(task -> task(typed, known, task, told));
        for (String back : typed.each("back")) {
            lines.said().stream()
                    .filter(said -> said.id().toString().equals(back))
                    .forEach(said -> told.add(new Operation.TakeBack(said.id()), _ -> ""));
        }
        parts.read(typed, known, told);
        FindingTyped.read(typed, typed.idOrNone("machine"), null)
                .ifPresent(found -> told.add(found, FindingTyped::field));
        return told;
    }

    private static @Nullable String extraWhy(Typed typed, Map<String, String> known) {
        if (typed.asTyped().containsKey("extraWhy")) {
            return typed.line("extraWhy", WORDS);
        }
        String stood = known.getOrDefault("extraWhy", "");
        return stood.isEmpty() ? null : stood;
    }

    private void task(Typed typed, Map<String, String> known, DaySheet.TaskLine task, CorrectionTold told) {
        String outcome = "outcome." + task.id();
        String reason = "reason." + task.id();
        if (otherwise(typed, known, outcome) || otherwise(typed, known, reason)) {
            String said = typed.oneOf(outcome, OUTCOMES);
            told.add(
                    new Operation.TaskAnswered(
                            task.id(), Outcome.ofCode(said).orElse(Outcome.DONE), typed.line(reason, WORDS)),
                    member -> member.equals("reason") ? reason : outcome);
        }
        for (DaySheet.ReadingLine line : task.readings()) {
            String field = field(task.id(), line.spec().code());
            if (otherwise(typed, known, field)) {
                reading(typed.line(field, LINE), task.id(), line, told);
            }
        }
    }

    /** Another value; what it was taken with, and the volts beside it, stay as they were said. */
    private void reading(@Nullable String value, UUID task, DaySheet.ReadingLine line, CorrectionTold told) {
        String code = line.spec().code();
        Optional<DaySheet.Said> standing = reading(task, code);
        if (value == null) {
            standing.ifPresent(said -> told.add(new Operation.TakeBack(said.id()), _ -> field(task, code)));
            return;
        }
        told.add(
                new Operation.Measured(
                        task,
                        code,
                        value,
                        stood(standing, "unit").orElse(line.spec().unit()),
                        stood(standing, "running").orElse(null),
                        stood(standing, "volts").map(BigDecimal::new).orElse(null),
                        stood(standing, "instrument").flatMap(Ids::read).orElse(null)),
                _ -> field(task, code));
    }

    private static Optional<String> stood(Optional<DaySheet.Said> standing, String member) {
        return standing.map(said -> text(said, member)).filter(words -> !words.isEmpty());
    }

    static boolean otherwise(Typed typed, Map<String, String> known, String field) {
        String now = typed.line(field, WORDS);
        return !(now == null ? "" : now).equals(known.getOrDefault(field, ""));
    }

    private Optional<DaySheet.Said> last(String kind) {
        return lines.said().stream().filter(said -> said.kind().equals(kind)).reduce((_, later) -> later);
    }

    private Optional<DaySheet.Said> outcome(UUID task) {
        return of("task", task);
    }

    private Optional<DaySheet.Said> reading(UUID task, String code) {
        return lines.said().stream()
                .filter(said -> said.kind().equals("reading"))
                .filter(said -> text(said, "task").equals(task.toString())
                        && text(said, "code").equals(code))
                .findFirst();
    }

    private Optional<DaySheet.Said> of(String kind, UUID task) {
        return lines.said().stream()
                .filter(said -> said.kind().equals(kind) && text(said, "task").equals(task.toString()))
                .findFirst();
    }

    static String text(DaySheet.Said said, String member) {
        Object value = said.body().get(member);
        return value == null ? "" : value.toString();
    }
}
