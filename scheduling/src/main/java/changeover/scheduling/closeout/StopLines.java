package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Circumstances;
import changeover.contracts.catalogue.Expected;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.scheduling.closeout.DaySheet.ReadingLine;
import changeover.scheduling.closeout.DaySheet.Said;
import changeover.scheduling.closeout.DaySheet.TaskLine;
import changeover.scheduling.closeout.ReportFacts.FindingFact;
import com.fasterxml.jackson.core.type.TypeReference;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What a stop asks of the technician: its tasks with the bands of this home's machines, and what was said so far. */
@ApplicationScoped
public class StopLines {

    private static final TypeReference<Map<String, Object>> FIELDS = new TypeReference<>() {};

    @Inject
    VisitsAtHand visits;

    @Inject
    Operations operations;

    @Inject
    Readings readings;

    @Inject
    Findings findings;

    @Inject
    ShopAround shop;

    /** The part of a stop that comes from its visit. */
    public record Lines(
            List<MachineAtHand> machines, List<FindingFact> openFindings, List<TaskLine> tasks, List<Said> said) {}

    public Lines of(UUID visitId, UUID technician, Catalogue catalogue) {
        VisitAtHand visit = visits.of(visitId);
        Map<Readings.Of, Reading> last = readings.last(visit.machines().keySet(), visitId);
        Set<String> tickets = shop.of(visit, technician).tickets();
        return new Lines(
                List.copyOf(visit.machines().values()),
                findings.openIn(visit.homeId()).stream()
                        .map(finding -> Findings.fact(
                                finding, visit.machineName(finding.equipmentId().orElse(null)), catalogue, List.of()))
                        .toList(),
                visit.tasks().values().stream()
                        .map(task -> task(task, visit, last, tickets))
                        .toList(),
                Operations.sheet(operations.of(visitId)).standing().values().stream()
                        .map(StopLines::said)
                        .toList());
    }

    private static TaskLine task(
            TaskAtHand task, VisitAtHand visit, Map<Readings.Of, Reading> last, Set<String> tickets) {
        Map<String, String> nameplate = visit.nameplate(task.equipment());
        return new TaskLine(
                task.id(),
                task.equipment(),
                visit.machineName(task.equipment()),
                task.code(),
                task.wording(),
                task.reason(),
                task.basis(),
                task.act(),
                task.ticket(),
                task.ticket() == null || tickets.contains(task.ticket()),
                task.minutes(),
                task.caution(),
                task.readings().stream()
                        .filter(spec -> spec.isAskedOf(nameplate))
                        .map(spec -> reading(spec, task, nameplate, last))
                        .toList(),
                task.parts());
    }

    private static ReadingLine reading(
            ReadingSpec spec, TaskAtHand task, Map<String, String> nameplate, Map<Readings.Of, Reading> last) {
        Optional<Expected> expected = Optional.ofNullable(spec.band())
                .filter(_ -> spec.unit() != null)
                .flatMap(band -> Expected.of(
                        band,
                        UnitOfMeasure.ofCode(Objects.requireNonNull(spec.unit())),
                        Circumstances.of(nameplate, Map.of())));
        Reading before = task.equipment() == null ? null : last.get(new Readings.Of(task.equipment(), spec.code()));
        return new ReadingLine(
                spec,
                expected.map(Expected::low).orElse(null),
                expected.map(Expected::high).orElse(null),
                before == null ? null : Readings.last(before));
    }

    private static Said said(Taken taken) {
        return new Said(
                taken.id(),
                taken.operation().kind(),
                AnswerJson.JSON.convertValue(OperationJson.write(taken.operation()), FIELDS));
    }
}
