package changeover.web.field;

import changeover.scheduling.closeout.DaySheet.ReadingLine;
import changeover.scheduling.closeout.DaySheet.Said;
import changeover.scheduling.closeout.DaySheet.TaskLine;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.Outcome;
import changeover.web.session.FindingTyped;
import changeover.web.session.Typed;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One task's form, read into what it says: outcome, readings, a finding, a part, and what is taken back. */
final class TaskForm {

    private static final int LINE = 200;
    private static final int WORDS = 2000;

    private final Typed typed;
    private final TaskLine task;
    private final SheetSoFar sheet;

    TaskForm(Typed typed, TaskLine task, SheetSoFar sheet) {
        this.typed = typed;
        this.task = task;
        this.sheet = sheet;
    }

    /** What the form shows before anybody types: what stands on the sheet. */
    static Map<String, String> known(TaskLine task, SheetSoFar sheet, String language) {
        Map<String, String> known = new LinkedHashMap<>();
        Optional<Said> outcome = sheet.outcome(task.id());
        known.put(
                "outcome", outcome.map(said -> SheetSoFar.text(said, "outcome")).orElse(""));
        known.put("reason", outcome.map(said -> SheetSoFar.text(said, "reason")).orElse(""));
        known.put("cause", outcome.map(said -> SheetSoFar.text(said, "cause")).orElse(""));
        for (ReadingLine line : task.readings()) {
            String code = line.spec().code();
            sheet.reading(task.id(), code).ifPresent(said -> {
                known.put("reading." + code, SheetSoFar.text(said, "value"));
                known.put("unit." + code, SheetSoFar.text(said, "unit"));
                known.put("running." + code, SheetSoFar.text(said, "running"));
                known.merge(
                        "instrument", SheetSoFar.text(said, "instrument"), (one, other) -> one.isEmpty() ? other : one);
            });
        }
        known.put("level", FindingTyped.NOTHING);
        known.put("language", language);
        known.put("quantity", "1");
        known.put("why", "plan");
        return known;
    }

    /** Whether a reading was said that did not stand before. */
    boolean read(Telling telling) {
        boolean measured = false;
        for (ReadingLine line : task.readings()) {
            measured |= reading(telling, line);
        }
        String outcome = typed.oneOf("outcome", Set.of("done", "not_applicable", "deferred"));
        String reason = typed.line("reason", WORDS);
        telling.replace(
                new Operation.TaskAnswered(
                        task.id(), Outcome.ofCode(outcome).orElse(Outcome.DONE), reason, cause(outcome)),
                sheet.outcome(task.id()).orElse(null),
                field -> field.equals("reason") || field.equals("cause") ? field : "outcome");
        finding(telling);
        part(telling);
        for (String operation : typed.each("back")) {
            sheet.said().stream()
                    .filter(said -> said.id().toString().equals(operation))
                    .findFirst()
                    .ifPresent(said -> telling.add(new Operation.TakeBack(said.id()), _ -> "back"));
        }
        return measured;
    }

    /** Asked only of a reading that needs warm air. */
    private @Nullable String cause(String outcome) {
        return outcome.equals("deferred") && typed.line("weather", 10) != null
                ? typed.oneOf("cause", Set.of("cold", "other"))
                : null;
    }

    private boolean reading(Telling telling, ReadingLine line) {
        String code = line.spec().code();
        String value = typed.line("reading." + code, LINE);
        Said standing = sheet.reading(task.id(), code).orElse(null);
        if (value == null) {
            if (standing != null) {
                telling.add(new Operation.TakeBack(standing.id()), _ -> "reading." + code);
            }
            return false;
        }
        String unit = typed.line("unit." + code, 40);
        return telling.replace(
                new Operation.Measured(
                        task.id(),
                        code,
                        value,
                        unit == null ? line.spec().unit() : unit,
                        typed.line("running." + code, LINE),
                        volts(standing),
                        InstrumentChoices.isNumber(line) ? instrument(standing) : null),
                standing,
                field -> field.equals("instrument")
                        ? field
                        : field.equals("unit") || field.equals("running") ? field + "." + code : "reading." + code);
    }

    /** The form does not ask for them: as a device sent them. */
    private static @Nullable BigDecimal volts(@Nullable Said standing) {
        String stood = standing == null ? "" : SheetSoFar.text(standing, "volts");
        return stood.isEmpty() ? null : new BigDecimal(stood);
    }

    /** As the form says; where it does not ask, as it stands. */
    private @Nullable UUID instrument(@Nullable Said standing) {
        if (typed.asTyped().containsKey("instrument")) {
            return typed.idOrNone("instrument");
        }
        String stood = standing == null ? "" : SheetSoFar.text(standing, "instrument");
        return stood.isEmpty() ? null : UUID.fromString(stood);
    }

    private void finding(Telling telling) {
        FindingTyped.read(typed, task.equipmentId(), task.id())
                .ifPresent(found -> telling.add(found, FindingTyped::field));
    }

    private void part(Telling telling) {
        String part = typed.line("part", LINE);
        if (part == null) {
            return;
        }
        BigDecimal quantity = typed.number("quantity", new BigDecimal("0.0001"), new BigDecimal("9999"));
        String why = typed.oneOf("why", Set.of("plan", "repair", "extra", "warranty"));
        UUID machine = task.equipmentId();
        telling.add(
                new Operation.PartTaken(part, quantity, null, machine, why, typed.line("short", LINE)),
                field -> field.isEmpty() || field.equals("place") ? "part" : field);
    }
}
