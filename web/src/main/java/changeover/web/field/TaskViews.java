package changeover.web.field;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Caution;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.DaySheet.TaskLine;
import changeover.scheduling.closeout.MachineAtHand;
import changeover.scheduling.closeout.Reading;
import changeover.scheduling.closeout.Readings;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Frame;
import changeover.web.session.ReadingScale;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes one task as it is done: what may hurt first, then what is read, then what may be said and used. */
@ApplicationScoped
class TaskViews {

    @Inject
    VisitViews visits;

    @Inject
    OwnCatalogue own;

    @Inject
    Readings readings;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    CurrentTenant current;

    TaskView of(VisitLists.Row row, StopLines.Lines lines, TaskLine task, Frame frame) {
        Locale locale = frame.locale();
        Catalogue catalogue = own.catalogue();
        List<VisitView.Line> steps = visits.tasks(lines, locale);
        VisitView.Line here = steps.stream()
                .filter(step -> step.id().equals(task.id()))
                .findFirst()
                .orElseThrow();
        MachineAtHand machine = machine(lines, task);
        var sheet = new SheetSoFar(lines.said());
        VisitView.Line next = next(steps, here);
        return new TaskView(
                row.id(),
                row.street(),
                task.id(),
                here.number(),
                steps,
                here.machine(),
                here.words(),
                here.reason(),
                task.mayDoIt() || task.ticket() == null ? "" : task.ticket(),
                cautions(catalogue, task, machine)
                        .map(one -> TaskView.Warning.of(one, locale))
                        .toList(),
                read(row, task, frame),
                sentences(catalogue, machine, task, locale),
                sheet.findings(task.id()).stream()
                        .map(said -> finding(said, catalogue, locale))
                        .toList(),
                parts(row, task, machine, locale),
                sheet.photos(task.id()).size(),
                taken(sheet, task, locale),
                next == null ? "" : next.words(),
                catalogue.findTask(task.code()).map(Task::outdoorAtLeast).isPresent(),
                row.how() != null);
    }

    /** The next task without an outcome, after this one and then from the top; null when there is none. */
    static VisitView.@Nullable Line next(List<VisitView.Line> steps, VisitView.Line here) {
        return Stream.concat(
                        steps.stream().filter(step -> step.number() > here.number()),
                        steps.stream().filter(step -> step.number() < here.number()))
                .filter(step -> step.outcome().isEmpty())
                .findFirst()
                .orElse(null);
    }

    private static @Nullable MachineAtHand machine(StopLines.Lines lines, TaskLine task) {
        return lines.machines().stream()
                .filter(one -> one.id().equals(task.equipmentId()))
                .findFirst()
                .orElse(null);
    }

    private static Stream<Caution> cautions(Catalogue catalogue, TaskLine line, @Nullable MachineAtHand machine) {
        Task task = catalogue.findTask(line.code()).orElse(null);
        Map<String, String> plate = machine == null ? Map.of() : machine.nameplate();
        return task != null
                ? catalogue.cautionsFor(task, plate).stream()
                : Stream.ofNullable(line.caution()).flatMap(code -> catalogue.findCaution(code).stream());
    }

    private List<ReadingView> read(VisitLists.Row row, TaskLine task, Frame frame) {
        List<Reading> kept = readings.ofVisit(row.id()).stream()
                .filter(one -> one.visitTaskId().equals(task.id()))
                .toList();
        return task.readings().stream()
                .map(line -> ReadingView.of(
                        line,
                        kept.stream()
                                .filter(one -> one.code().equals(line.spec().code()))
                                .findFirst()
                                .orElse(null),
                        frame.locale(),
                        line.last() == null ? "" : frame.brief(line.last().day())))
                .toList();
    }

    /** What the task's own readings offer comes first, then what fits the machine. */
    private static List<TaskView.Choice> sentences(
            Catalogue catalogue, @Nullable MachineAtHand machine, TaskLine task, Locale locale) {
        List<String> offered = task.readings().stream()
                .map(line -> line.spec().sentence())
                .filter(Objects::nonNull)
                .toList();
        List<Sentence> fitting = machine == null
                ? List.copyOf(catalogue.sentences())
                : List.copyOf(catalogue.sentencesFor(machine.kind()));
        return fitting.stream()
                .sorted(Comparator.comparing(sentence -> !offered.contains(sentence.code())))
                .map(one -> new TaskView.Choice(one.code(), one.wording().in(locale)))
                .toList();
    }

    static TaskView.Kept finding(DaySheet.Said said, Catalogue catalogue, Locale locale) {
        String code = SheetSoFar.text(said, "sentence");
        String words = catalogue.sentences().stream()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .map(one -> one.wording().in(locale))
                .orElseGet(() -> SheetSoFar.text(said, "text"));
        return new TaskView.Kept(said.id(), SheetSoFar.text(said, "level"), words);
    }

    /** What the van carries, the parts that this task uses first. */
    private List<TaskView.Choice> parts(
            VisitLists.Row row, TaskLine task, @Nullable MachineAtHand machine, Locale locale) {
        List<KnownPart> known = parts.all();
        Map<String, BigDecimal> held = known.isEmpty()
                ? Map.of()
                : places.usual(row.technicianId(), current.person())
                        .map(place -> stock.onHand(place.id()))
                        .orElse(Map.of());
        List<String> kinds = task.parts().stream().map(Task.PartUse::part).toList();
        return known.stream()
                .sorted(Comparator.comparing(part -> !kinds.contains(part.kind())
                        || (part.size() != null && (machine == null || !part.goesInto(machine.fits())))))
                .map(part -> new TaskView.Choice(
                        part.code(),
                        part.name().in(locale) + " ("
                                + ReadingScale.figure(plain(held.getOrDefault(part.code(), BigDecimal.ZERO)), locale)
                                + ")"))
                .toList();
    }

    private List<TaskView.Kept> taken(SheetSoFar sheet, TaskLine task, Locale locale) {
        String machine = task.equipmentId() == null ? "" : task.equipmentId().toString();
        return sheet.parts().stream()
                .filter(said -> SheetSoFar.text(said, "equipment").equals(machine))
                .map(said -> {
                    String code = SheetSoFar.text(said, "part");
                    String name = parts.everKnown(code)
                            .map(part -> part.name().in(locale))
                            .orElse(code);
                    return new TaskView.Kept(
                            said.id(),
                            "",
                            ReadingScale.figure(new BigDecimal(SheetSoFar.text(said, "quantity")), locale) + " × "
                                    + name);
                })
                .toList();
    }

    private static BigDecimal plain(BigDecimal figure) {
        BigDecimal bare = figure.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
