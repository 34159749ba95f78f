package changeover.web.office;

import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.OperationJson;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.closeout.StopLines;
import changeover.web.session.FindingTyped;
import changeover.web.session.Typed;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** A correction as it is typed: what is written otherwise than it stands becomes an operation; what is the same is not said again. */
final class AmendmentForm {

    private static final int LINE = 200;
    private static final int WORDS = 2000;
    private static final Set<String> OUTCOMES = Set.of("done", "not_applicable", "deferred");

    private final StopLines.Lines lines;

    AmendmentForm(StopLines.Lines lines) {
        this.lines = lines;
    }

    /** What stands, as the form shows it. */
    Map<String, String> known() {
        Map<String, String> known = new LinkedHashMap<>();
        known.put("level", FindingTyped.NOTHING);
        last("minutes").ifPresent(said -> {
            known.put("minutes", text(said, "minutes"));
            known.put("extra", text(said, "extra"));
        });
        last("received").ifPresent(said -> known.put("received", text(said, "by")));
        last("note").ifPresent(said -> known.put("note", text(said, "text")));
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

    /** The operations that make what was typed true. @param form the id that was made with the page */
    List<SentOperation> read(Typed typed, UUID form, Instant at) {
        List<Operation> told = new ArrayList<>();
        Map<String, String> known = known();
        if (otherwise(typed, known, "minutes") || otherwise(typed, known, "extra")) {
            int extra = typed.line("extra", LINE) == null ? 0 : typed.whole("extra", 0, 1440);
            String why = last("minutes")
                    .map(said -> text(said, "extraWhy"))
                    .filter(words -> !words.isEmpty())
                    .orElse(null);
            told.add(new Operation.MinutesTold(typed.whole("minutes", 0, 1440), extra, why));
        }
        if (otherwise(typed, known, "received") && typed.line("received", LINE) != null) {
            told.add(new Operation.Received(typed.line("received", LINE), null));
        }
        if (otherwise(typed, known, "note") && typed.line("note", WORDS) != null) {
            told.add(new Operation.HouseholdNote(typed.text("note", WORDS)));
        }
        lines.tasks().forEach(task -> task(typed, known, task, told));
        for (String back : typed.each("back")) {
            lines.said().stream()
                    .filter(said -> said.id().toString().equals(back))
                    .forEach(said -> told.add(new Operation.TakeBack(said.id())));
        }
        FindingTyped.read(typed, typed.idOrNone("machine"), null).ifPresent(told::add);
        List<SentOperation> sent = new ArrayList<>();
        for (Operation operation : told) {
            sent.add(SentOperation.of(
                    Ids.derived(form, operation.kind() + OperationJson.write(operation)),
                    "desk",
                    sent.size(),
                    at,
                    operation));
        }
        return sent;
    }

    private void task(Typed typed, Map<String, String> known, DaySheet.TaskLine task, List<Operation> told) {
        String outcome = "outcome." + task.id();
        String reason = "reason." + task.id();
        if (otherwise(typed, known, outcome) || otherwise(typed, known, reason)) {
            String said = typed.oneOf(outcome, OUTCOMES);
            told.add(new Operation.TaskAnswered(
                    task.id(), Outcome.ofCode(said).orElse(Outcome.DONE), typed.line(reason, WORDS)));
        }
        for (DaySheet.ReadingLine line : task.readings()) {
            String code = line.spec().code();
            String field = field(task.id(), code);
            if (!otherwise(typed, known, field)) {
                continue;
            }
            String value = typed.line(field, LINE);
            Optional<DaySheet.Said> standing = reading(task.id(), code);
            if (value == null) {
                standing.ifPresent(said -> told.add(new Operation.TakeBack(said.id())));
            } else {
                told.add(new Operation.Measured(
                        task.id(),
                        code,
                        value,
                        standing.map(said -> text(said, "unit"))
                                .filter(unit -> !unit.isEmpty())
                                .orElse(line.spec().unit()),
                        standing.map(said -> text(said, "running"))
                                .filter(running -> !running.isEmpty())
                                .orElse(null),
                        null));
            }
        }
    }

    private static boolean otherwise(Typed typed, Map<String, String> known, String field) {
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
