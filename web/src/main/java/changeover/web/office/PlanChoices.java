package changeover.web.office;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue.Own;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import changeover.contracts.plans.PlanFacts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Everything of the catalogue that a plan can promise or include, in the words of who reads it. */
public record PlanChoices(List<Group> groups, List<PartChoice> parts, List<FurtherChoice> further) {

    /** The tasks of the same kinds of machine. */
    public record Group(String kinds, List<TaskChoice> tasks) {}

    /**
     * @param own where the plan's own cadence stands in the form
     * @param number where its number does
     * @param kept whether the plan's own cadence is of another kind than the form can write
     */
    public record TaskChoice(
            String code,
            String words,
            String often,
            boolean household,
            int minutes,
            String own,
            String number,
            boolean kept) {}

    public record PartChoice(String field, String words) {}

    /** A kind of machine of which further ones may cost more. */
    public record FurtherChoice(String price, String within, String words) {}

    /** @param plan whose own cadences are said instead of the catalogue's; null for a new one */
    static PlanChoices of(Own own, @Nullable PlanFacts plan, Locale locale) {
        Map<List<String>, List<TaskChoice>> byKinds = new LinkedHashMap<>();
        for (Task task : offered(own.catalogue(), plan)) {
            byKinds.computeIfAbsent(task.kinds(), _ -> new ArrayList<>()).add(choice(task, own, plan, locale));
        }
        return new PlanChoices(
                byKinds.entrySet().stream()
                        .map(group -> new Group(kinds(group.getKey(), own.catalogue(), locale), group.getValue()))
                        .toList(),
                own.catalogue().parts().stream()
                        .map(part -> new PartChoice(
                                PlanForm.fieldOf(part), part.wording().in(locale)))
                        .toList(),
                own.catalogue().kinds().stream()
                        .map(kind -> new FurtherChoice(
                                PlanExtras.price(kind.code()),
                                PlanExtras.included(kind.code()),
                                kind.wording().in(locale)))
                        .toList());
    }

    /** A task withdrawn since is still offered to the plan that promises it: saving the plan must not drop it. */
    private static List<Task> offered(Catalogue catalogue, @Nullable PlanFacts plan) {
        List<Task> offered = new ArrayList<>(catalogue.tasks());
        if (plan != null) {
            plan.tasks().stream()
                    .flatMap(promise -> catalogue.findTask(promise.taskCode()).stream())
                    .filter(task -> !offered.contains(task))
                    .forEach(offered::add);
        }
        return offered;
    }

    private static TaskChoice choice(Task task, Own trade, @Nullable PlanFacts plan, Locale locale) {
        @Nullable Cadence own = plan == null ? null : ownCadence(task, plan);
        Task promised = own == null
                ? Interval.over(task, null, trade.intervals())
                : task.withCadence(own, task.basis(), task.source());
        return new TaskChoice(
                task.code(),
                task.wording().in(locale),
                promised.cadence().sentence(trade.seasons().climate()).in(locale),
                task.who() == Who.HOUSEHOLD,
                task.minutes(),
                PlanRhythm.field(task.code()),
                PlanRhythm.number(task.code()),
                PlanRhythm.isKept(own));
    }

    private static @Nullable Cadence ownCadence(Task task, PlanFacts plan) {
        for (PlanFacts.Promise promise : plan.tasks()) {
            if (promise.taskCode().equals(task.code())) {
                return promise.cadence();
            }
        }
        return null;
    }

    private static String kinds(List<String> codes, Catalogue catalogue, Locale locale) {
        return codes.stream()
                .flatMap(code -> catalogue.findKind(code).stream())
                .map(Kind::wording)
                .map(wording -> wording.in(locale))
                .collect(Collectors.joining(", "));
    }
}
