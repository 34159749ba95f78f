package changeover.web.office;

import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.web.session.FormRows;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The form of a task: for which kinds, in both wordings, by whom, how often, what is read and used, on what it rests. */
final class OwnTaskForm {

    static final int MOST_READINGS = 10;
    static final int MOST_PARTS = 6;

    private static final List<String> READING = List.of("code", "en", "fr");
    private static final List<String> PART = List.of("kind");

    private final Typed typed;
    private final FormRows rows = new FormRows();
    private boolean understood;

    OwnTaskForm(Typed typed) {
        this.typed = typed;
    }

    /** @param before the task as it stands, with what the form does not ask; null for a new one */
    Task read(@Nullable Task before) {
        String basis = line("basis", 200);
        var task = new Task(
                before == null ? line("code", 60) : before.code(),
                typed.each("kinds").stream().distinct().toList(),
                before == null ? Map.of() : before.when(),
                new Wording(line("wordingEn", 200), line("wordingFr", 200)),
                Who.ofCode(typed.oneOf("who", Set.of("household", "technician"))),
                TicketNeeded.ofCode(typed.oneOf("ticket", Set.of("none", "refrigerant", "gas", "electrical"))),
                typed.whole("minutes", 1, 600),
                OwnCadenceForm.read(typed),
                typed.numberOrNone("outdoorAtLeast", -60, 60),
                readings(before),
                parts(),
                typed.line("caution", 60),
                basis.isEmpty() ? Task.COMMON_PRACTICE : basis,
                typed.line("source", 500));
        typed.understood();
        understood = true;
        return task;
    }

    List<Refusal> placed(List<Refusal> refusals) {
        return understood ? rows.placed(refusals) : refusals;
    }

    static Said blank() {
        return Said.filled(
                Map.of("who", "technician", "ticket", "none", "minutes", "15", "how", "times-a-year", "times", "1"));
    }

    static Said filled(Task task, Locale locale) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put("kinds", task.kinds());
        put(fields, "wordingEn", task.wording().en());
        put(fields, "wordingFr", task.wording().fr());
        put(fields, "who", task.who().code());
        put(fields, "ticket", task.ticket().code());
        put(fields, "minutes", String.valueOf(task.minutes()));
        OwnCadenceForm.fill(fields, task.cadence());
        BigDecimal outdoor = task.outdoorAtLeast();
        put(fields, "outdoorAtLeast", outdoor == null ? "" : Written.whole(outdoor, locale));
        put(fields, "caution", task.caution() == null ? "" : task.caution());
        put(fields, "basis", task.basis().equals(Task.COMMON_PRACTICE) ? "" : task.basis());
        put(fields, "source", task.source() == null ? "" : task.source());
        for (int at = 0; at < task.readings().size(); at++) {
            OwnReadingForm.fill(
                    fields, FormRows.Row.of("reading", at), task.readings().get(at), locale);
        }
        for (int at = 0; at < task.parts().size(); at++) {
            Task.PartUse use = task.parts().get(at);
            FormRows.Row row = FormRows.Row.of("part", at);
            put(fields, row.of("kind"), use.part());
            put(fields, row.of("quantity"), Written.whole(use.quantity(), locale));
            put(fields, row.of("eachTime"), use.eachTime() ? "yes" : "");
        }
        return new Said(fields, Map.of(), List.of());
    }

    private List<ReadingSpec> readings(@Nullable Task before) {
        var readings = new ArrayList<ReadingSpec>();
        for (FormRows.Row row : rows.filled(typed, "reading", MOST_READINGS, READING)) {
            ReadingSpec was = before == null
                    ? null
                    : before.reading(line(row.of("code"), 60)).orElse(null);
            readings.add(OwnReadingForm.read(typed, row, was));
        }
        return readings;
    }

    private List<Task.PartUse> parts() {
        var parts = new ArrayList<Task.PartUse>();
        for (FormRows.Row row : rows.filled(typed, "part", MOST_PARTS, PART)) {
            parts.add(new Task.PartUse(
                    line(row.of("kind"), 60),
                    typed.number(row.of("quantity"), BigDecimal.ZERO, BigDecimal.valueOf(1000)),
                    typed.ticked(row.of("eachTime"))));
        }
        return parts;
    }

    private String line(String field, int most) {
        String text = typed.line(field, most);
        return text == null ? "" : text;
    }

    private static void put(Map<String, List<String>> fields, String name, String value) {
        fields.put(name, List.of(value));
    }
}
