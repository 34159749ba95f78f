package changeover.billing.pricing;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.PartSize;
import changeover.contracts.catalogue.Task;
import changeover.scheduling.visits.Machine;
import changeover.scheduling.visits.Promise;
import changeover.scheduling.visits.VisitPlan;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a year of a plan takes in one home: its visits as they are laid out, and of the parts that their tasks use up those
 * that the plan gives. What is used beyond that is sold, so it is no cost of the plan.
 *
 * @param readyMinutes of other work that the plan gives
 */
public record PlanYear(List<Visit> visits, List<Part> parts, int readyMinutes) {

    /**
     * @param minutes of promised tasks, by kind of machine, those of each person that it needs
     * @param people who are sent
     */
    public record Visit(Map<String, Integer> minutes, int people) {

        public Visit {
            minutes = Map.copyOf(minutes);
        }

        public Visit(Map<String, Integer> minutes) {
            this(minutes, 1);
        }

        int of(String kind) {
            return minutes.getOrDefault(kind, 0);
        }

        public int tasks() {
            return minutes.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /** @param size which one of its kind, as the machine's card says; null when any will do or nobody wrote it down */
    public record Part(String kind, @Nullable String size, BigDecimal quantity) {}

    private record Which(String kind, @Nullable String size) {}

    public PlanYear {
        visits = List.copyOf(visits);
        parts = List.copyOf(parts);
    }

    /**
     * A visit with a task that needs two people is made by two from its first minute to its last.
     *
     * @param given by the plan a year, by kind of part
     * @param needTwo the tasks that need two people, by code
     */
    public static PlanYear of(
            VisitPlan plan,
            List<Machine> machines,
            Map<String, BigDecimal> given,
            int readyMinutes,
            Set<String> needTwo,
            Catalogue catalogue) {
        Map<UUID, Machine> byId = machines.stream().collect(Collectors.toMap(Machine::id, Function.identity()));
        List<Visit> visits = plan.visits().stream()
                .map(visit -> visit(visit.tasks(), byId, needTwo))
                .toList();
        return new PlanYear(visits, given(used(plan, byId, catalogue), given), readyMinutes);
    }

    private static Visit visit(List<Promise> tasks, Map<UUID, Machine> byId, Set<String> needTwo) {
        int people = tasks.stream().anyMatch(task -> needTwo.contains(task.taskCode())) ? 2 : 1;
        return new Visit(
                tasks.stream()
                        .collect(Collectors.groupingBy(
                                task -> kind(task, byId), Collectors.summingInt(task -> people * task.minutes()))),
                people);
    }

    private static String kind(Promise promise, Map<UUID, Machine> byId) {
        Machine machine = byId.get(promise.equipmentId());
        return machine == null ? "" : machine.kind();
    }

    /** Looking uses nothing up: only doing and replacing do. The first in the year come first. */
    private static List<Part> used(VisitPlan plan, Map<UUID, Machine> byId, Catalogue catalogue) {
        List<Part> used = new ArrayList<>();
        Stream.concat(plan.visits().stream().flatMap(visit -> visit.tasks().stream()), plan.household().stream())
                .filter(promise -> promise.due().act() != Due.Act.CHECK)
                .sorted(Comparator.comparing(promise -> promise.due().on()))
                .forEach(promise -> catalogue.findTask(promise.taskCode()).stream()
                        .flatMap(task -> task.parts().stream())
                        .filter(Task.PartUse::eachTime)
                        .forEach(use -> used.add(new Part(
                                use.part(),
                                size(use.part(), byId.get(promise.equipmentId()), catalogue),
                                use.quantity()
                                        .multiply(count(use.part(), byId.get(promise.equipmentId()), catalogue))))));
        return used;
    }

    private static @Nullable String size(String kind, @Nullable Machine machine, Catalogue catalogue) {
        return machine == null
                ? null
                : catalogue
                        .findPart(kind)
                        .flatMap(part -> catalogue.sizeOf(part, machine.fits()))
                        .map(PartSize::dims)
                        .orElse(null);
    }

    private static BigDecimal count(String kind, @Nullable Machine machine, Catalogue catalogue) {
        return BigDecimal.valueOf(machine == null ? 1 : catalogue.countOf(kind, machine.fits()));
    }

    private static List<Part> given(List<Part> used, Map<String, BigDecimal> given) {
        Map<String, BigDecimal> left = new HashMap<>(given);
        Map<Which, BigDecimal> sums = new LinkedHashMap<>();
        for (Part part : used) {
            BigDecimal some = part.quantity().min(left.getOrDefault(part.kind(), BigDecimal.ZERO));
            if (some.signum() > 0) {
                left.merge(part.kind(), some, BigDecimal::subtract);
                sums.merge(new Which(part.kind(), part.size()), some, BigDecimal::add);
            }
        }
        return sums.entrySet().stream()
                .map(sum -> new Part(sum.getKey().kind(), sum.getKey().size(), sum.getValue()))
                .toList();
    }

    /** How often the home is gone to, however many go. */
    public int trips() {
        return visits.size();
    }

    /** How often somebody goes to the home and back: twice at a visit for two. */
    public int goings() {
        return visits.stream().mapToInt(Visit::people).sum();
    }

    public int taskMinutes() {
        return visits.stream().mapToInt(Visit::tasks).sum();
    }
}
