package changeover.scheduling.dayplan;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.PartSize;
import changeover.contracts.catalogue.Task;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a task uses up on a machine, in the size that fits it, as many as it holds. */
final class Loads {

    private Loads() {}

    /** @param fits what fits the machine, as its card says */
    static Stream<DayPlan.Load> of(Task task, @Nullable String machine, Map<String, String> fits, Catalogue catalogue) {
        return task.parts().stream()
                .flatMap(use -> catalogue.findPart(use.part()).stream()
                        .map(part -> new DayPlan.Load(
                                part.code(),
                                part.wording(),
                                part.unit(),
                                catalogue
                                        .sizeOf(part, fits)
                                        .map(PartSize::words)
                                        .orElse(null),
                                use.quantity().multiply(BigDecimal.valueOf(catalogue.countOf(part.code(), fits))),
                                use.eachTime(),
                                machine)));
    }

    private record Same(
            String partKind,
            @Nullable String size,
            boolean eachTime,
            @Nullable String machine) {}

    /** The same part of the same size counted together, for each machine by itself. */
    static List<DayPlan.Load> byMachine(Collection<DayPlan.Load> loads) {
        var sums = new LinkedHashMap<Same, DayPlan.Load>();
        for (DayPlan.Load load : loads) {
            sums.merge(new Same(load.partKind(), load.size(), load.eachTime(), load.machine()), load, Loads::sum);
        }
        return List.copyOf(sums.values());
    }

    /** The same part of the same size counted together, whatever the machine. */
    static List<DayPlan.Load> together(Collection<DayPlan.Load> loads) {
        return byMachine(loads.stream().map(Loads::anyMachine).toList());
    }

    private static DayPlan.Load anyMachine(DayPlan.Load load) {
        return new DayPlan.Load(
                load.partKind(), load.part(), load.unit(), load.size(), load.quantity(), load.eachTime(), null);
    }

    private static DayPlan.Load sum(DayPlan.Load one, DayPlan.Load other) {
        return new DayPlan.Load(
                one.partKind(),
                one.part(),
                one.unit(),
                one.size(),
                one.quantity().add(other.quantity()),
                one.eachTime(),
                one.machine());
    }
}
