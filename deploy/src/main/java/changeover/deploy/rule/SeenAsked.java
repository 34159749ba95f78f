package changeover.deploy.rule;

import changeover.scheduling.intervals.FilterLog;
import changeover.scheduling.intervals.Look;
import changeover.scheduling.intervals.Look.By;
import changeover.scheduling.intervals.Look.What;
import changeover.scheduling.intervals.Seen;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What was seen of a home's filters: times since they were put in, or the dated records of a slot. */
final class SeenAsked {
    private static final int MOST = 10_000;

    private SeenAsked() {}

    static List<Seen> of(Question question, SpanUnit unit) {
        List<Seen> seen = new ArrayList<>();
        for (Question part : question.parts("seen")) {
            int times = part.number("times", 1);
            if (times < 1 || times > MOST || seen.size() + times > MOST) {
                throw new IllegalArgumentException("times must be 1 or more, and all together at most 10000.");
            }
            seen.addAll(Collections.nCopies(times, one(part, unit)));
        }
        if (question.has("log")) {
            seen.addAll(FilterLog.seen(
                    question.parts("log").stream().map(SeenAsked::look).toList()));
        }
        return seen;
    }

    private static Seen one(Question part, SpanUnit unit) {
        if (!part.has("greyAt")) {
            if (!part.has("cleanAt")) {
                throw new IllegalArgumentException("Each thing seen needs greyAt, cleanAt or both.");
            }
            return new Seen.CleanAt(unit.days(part.decimal("cleanAt")));
        }
        double grey = unit.days(part.decimal("greyAt"));
        return part.has("cleanAt")
                ? new Seen.GreyBetween(unit.days(part.decimal("cleanAt")), grey)
                : new Seen.GreyAt(grey);
    }

    private static Look look(Question record) {
        return new Look(record.day("day"), by(record.text("by")), what(record));
    }

    private static By by(String word) {
        return switch (word) {
            case "household" -> By.HOUSEHOLD;
            case "technician" -> By.TECHNICIAN;
            default -> throw new IllegalArgumentException("by must be household or technician, not " + word + ".");
        };
    }

    private static What what(Question record) {
        boolean changed = record.yes("changed", false);
        return switch (record.text("filter", "")) {
            case "clean" -> changed ? What.CHANGED_CLEAN : What.CLEAN;
            case "grey" -> changed ? What.CHANGED_GREY : What.GREY;
            case "" -> {
                if (!changed) {
                    throw new IllegalArgumentException("Each record in log needs filter, changed or both.");
                }
                yield What.CHANGED;
            }
            default ->
                throw new IllegalArgumentException("filter must be clean or grey, not " + record.text("filter") + ".");
        };
    }
}
