package changeover.web.office;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Grounds;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.Equipment;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;

/** What the catalogue has done to a machine and how often, and where the machine's own label says otherwise. */
@ApplicationScoped
public class HowOften {

    /**
     * @param basis what the interval rests on, in the words it was kept in
     * @param own whether this machine's own label gives it
     * @param months the months between two times, empty for another cadence
     */
    public record Line(
            String code, String task, String often, boolean household, String basis, boolean own, String months) {}

    List<Line> of(Equipment machine, OwnCatalogue.Own own, Locale locale) {
        return own.catalogue().tasksFor(machine.kind(), machine.fits()).stream()
                .map(task -> line(task, machine, own, locale))
                .toList();
    }

    private static Line line(Task shipped, Equipment machine, OwnCatalogue.Own own, Locale locale) {
        Task task = Interval.over(shipped, machine.id(), own.intervals());
        boolean ofItsOwn = own.intervals().stream()
                .anyMatch(one ->
                        one.taskCode().equals(task.code()) && machine.id().equals(one.equipmentId()));
        return new Line(
                task.code(),
                task.wording().in(locale),
                task.cadence().sentence(own.seasons().climate()).in(locale),
                task.who() == Who.HOUSEHOLD,
                Grounds.of(task).basisIn(locale),
                ofItsOwn,
                task.cadence() instanceof Cadence.EveryMonths every ? String.valueOf(every.months()) : "");
    }
}
