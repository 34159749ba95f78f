package changeover.web.field;

import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.Outcome;
import changeover.web.session.Typed;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The closing form, read into what it says. What is closed already is not said again. */
final class ClosureForm {

    private static final int LINE = 200;
    private static final int WORDS = 2000;
    private static final int MINUTES_OF_A_DAY = 1440;

    private final Typed typed;
    private final List<UUID> checklist;
    private final SheetSoFar sheet;
    private final @Nullable PaperTimes paper;

    /** @param paper when they came and left, as paper says; null where it says nothing */
    ClosureForm(Typed typed, List<UUID> checklist, SheetSoFar sheet, @Nullable PaperTimes paper) {
        this.paper = paper;
        this.typed = typed;
        this.checklist = checklist;
        this.sheet = sheet;
    }

    void read(Telling telling) {
        if (typed.ticked("rest")) {
            checklist.stream()
                    .filter(task -> sheet.outcome(task).isEmpty())
                    .forEach(task -> telling.add(new Operation.TaskAnswered(task, Outcome.DONE, null), _ -> "tasks"));
        }
        if (paper != null) {
            telling.add(new Operation.Arrive(), paper.arrived(), _ -> "arrived");
            telling.add(new Operation.Leave(), paper.left(), _ -> "left");
        }
        minutes(telling);
        received(telling);
        String note = typed.line("text", WORDS);
        if (note != null) {
            telling.replace(
                    new Operation.HouseholdNote(note), sheet.last("note").orElse(null), _ -> "text");
        }
        telling.replace(
                new Operation.Close(typed.line("short", LINE)),
                sheet.last("close").orElse(null),
                ClosureForm::atClose);
    }

    private void minutes(Telling telling) {
        if (typed.line("minutes", LINE) == null) {
            if (paper == null
                    && sheet.last("arrive").isPresent()
                    && sheet.last("leave").isEmpty()) {
                telling.add(new Operation.Leave(), _ -> "minutes");
            }
            return;
        }
        int minutes = typed.whole("minutes", 0, MINUTES_OF_A_DAY);
        int extra = typed.line("extra", LINE) == null ? 0 : typed.whole("extra", 0, MINUTES_OF_A_DAY);
        telling.replace(
                new Operation.MinutesTold(minutes, extra, typed.line("extraWhy", WORDS)),
                sheet.last("minutes").orElse(null),
                field -> field.isEmpty() ? "minutes" : field);
    }

    private void received(Telling telling) {
        String by = typed.line("by", LINE);
        String nobody = typed.line("nobodyWhy", WORDS);
        if (by != null || nobody != null) {
            received(telling, by, nobody);
        }
    }

    private void received(Telling telling, @Nullable String by, @Nullable String nobody) {
        telling.replace(
                new Operation.Received(by, nobody),
                sheet.last("received").orElse(null),
                field -> field.isEmpty() ? "by" : field);
    }

    private static String atClose(String field) {
        if (field.startsWith("task.")) {
            return "tasks";
        }
        return field.equals("received") ? "by" : field;
    }
}
