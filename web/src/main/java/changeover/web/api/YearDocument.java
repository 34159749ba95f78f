package changeover.web.api;

import changeover.scheduling.visits.YearOfHome;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Twelve months of a home as the API says them: visits with the reason of each task, what the household does itself, and
 * what no visit keeps. {@code until} and {@code latest} are last days.
 */
public record YearDocument(
        UUID home,
        LocalDate from,
        LocalDate until,
        List<Visit> visits,
        List<OwnTask> household,
        List<NotKept> notKept) {

    public record Visit(
            UUID id,
            @Nullable UUID agreement,
            String standing,
            LocalDate earliest,
            LocalDate latest,
            @Nullable LocalDate day,
            @Nullable String technician,
            int minutes,
            List<Task> tasks) {}

    public record Task(
            UUID id,
            @Nullable UUID unit,
            @Nullable String machine,
            String task,
            String words,
            String reason,
            String basis,
            LocalDate earliest,
            LocalDate latest) {}

    public record OwnTask(
            UUID id,
            @Nullable String machine,
            String task,
            String words,
            LocalDate due,
            @Nullable LocalDate done) {}

    public record NotKept(
            @Nullable String machine, String task, String words, LocalDate earliest, LocalDate latest, String why) {}

    static YearDocument of(YearOfHome year, Locale locale) {
        return new YearDocument(
                year.homeId(),
                year.year().from(),
                year.year().last(),
                year.visits().stream().map(visit -> visit(visit, locale)).toList(),
                year.household().stream().map(own -> own(own, locale)).toList(),
                year.unkept().stream().map(one -> notKept(one, locale)).toList());
    }

    private static Visit visit(YearOfHome.Going visit, Locale locale) {
        return new Visit(
                visit.visitId(),
                visit.agreementId(),
                visit.standing().name().toLowerCase(Locale.ROOT),
                visit.window().from(),
                visit.window().last(),
                visit.day(),
                visit.technician(),
                visit.minutes(),
                visit.tasks().stream().map(line -> task(line, locale)).toList());
    }

    private static Task task(YearOfHome.Line line, Locale locale) {
        return new Task(
                line.visitTaskId(),
                line.equipmentId(),
                line.machine(),
                line.taskCode(),
                line.task().in(locale),
                line.reason().in(locale),
                line.basis(),
                line.due().from(),
                line.due().last());
    }

    private static OwnTask own(YearOfHome.OwnTask own, Locale locale) {
        return new OwnTask(own.id(), own.machine(), own.taskCode(), own.task().in(locale), own.dueOn(), own.doneOn());
    }

    private static NotKept notKept(YearOfHome.NotKept one, Locale locale) {
        return new NotKept(
                one.machine(),
                one.taskCode(),
                one.task().in(locale),
                one.window().from(),
                one.window().last(),
                one.why().in(locale));
    }
}
