package changeover.web.office;

import changeover.contracts.catalogue.Grounds;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.visits.VisitLists;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import changeover.web.session.Frame;
import changeover.web.session.ShutInWords;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A visit as the office reads it: its day, its end, and of each task the window, the rule and the source. */
@ApplicationScoped
public class VisitInWords {

    /**
     * A visit in words.
     *
     * @param day its day with us; empty while a partner has it
     * @param partner who makes it, or made it, instead of us; empty for nobody
     */
    public record View(
            UUID id,
            UUID homeId,
            String home,
            @Nullable UUID agreementId,
            String kind,
            String first,
            String last,
            int minutes,
            String day,
            String starts,
            String technician,
            String how,
            String endedOn,
            String why,
            String seen,
            String note,
            List<String> shut,
            String typedBy,
            String partner,
            String partnerDay,
            List<Task> tasks) {}

    /**
     * A line of the checklist, and why it is there.
     *
     * @param id of its line
     * @param first the first day it may be done on
     * @param reason the rule in words: how often, and when the last time was
     * @param grounds what the rule rests on, in the reader's words
     * @param publication where that is published, by its own name; empty for nowhere
     * @param ticket refrigerant, gas or electrical; empty for none
     */
    public record Task(
            UUID id,
            String machine,
            String words,
            String first,
            String last,
            String reason,
            String grounds,
            String publication,
            String ticket,
            int minutes) {}

    @Inject
    Visits visits;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    ShutInWords shut;

    @Inject
    Closures closures;

    @Inject
    People people;

    View of(VisitLists.Row row, Frame frame) {
        List<VisitTask> tasks = visits.tasksOf(row.id());
        Map<UUID, String> machines =
                equipment
                        .all(tasks.stream()
                                .flatMap(task -> task.equipmentId().stream())
                                .distinct()
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(Equipment::id, Equipment::name));
        OwnCatalogue.Own own = catalogue.read();
        String why = visits.ending(row.id()).flatMap(ending -> ending.why()).orElse("");
        return new View(
                row.id(),
                row.homeId(),
                row.street() + ", " + row.city(),
                row.agreementId(),
                row.kind(),
                frame.inWords(row.first()),
                frame.inWords(row.last()),
                row.minutes(),
                row.day() == null || row.partner() != null ? "" : frame.inWords(row.day()),
                row.starts() == null ? "" : row.starts().toString(),
                row.technician() == null ? "" : row.technician(),
                row.how() == null ? "" : row.how(),
                row.endedOn() == null ? "" : frame.inWords(row.endedOn()),
                why,
                SeenDay.of(row).text(),
                visits.find(row.id()).flatMap(visit -> visit.note()).orElse(""),
                row.how() == null ? shut.of(row.homeId(), frame.locale()) : List.of(),
                closures.typedBy(row.id())
                        .flatMap(people::of)
                        .map(Membership::name)
                        .orElse(""),
                row.partner() == null ? "" : row.partner(),
                row.partner() == null || row.day() == null ? "" : frame.inWords(row.day()),
                tasks.stream().map(task -> task(task, machines, own, frame)).toList());
    }

    private static Task task(VisitTask task, Map<UUID, String> machines, OwnCatalogue.Own own, Frame frame) {
        Grounds grounds = task.grounds(own);
        return new Task(
                task.id(),
                task.equipmentId().map(id -> machines.getOrDefault(id, "")).orElse(""),
                task.wording().in(frame.locale()),
                frame.inWords(task.due().from()),
                frame.inWords(task.due().last()),
                task.reason().in(frame.locale()),
                grounds.wordsIn(frame.locale()),
                grounds.publication(),
                task.ticket().map(Object::toString).orElse(""),
                task.minutes());
    }
}
