package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.customers.ShutTimes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Lays years out by the rule; homes with the same term, machines, promises, past and shut days are laid out once. Safe for several workers. */
final class LaidOutYears {

    /** Plans remembered, the latest used; a season's neighbours are often alike. */
    private static final int REMEMBERED = 2_000;

    /** All that the rule asks of a year, its machines counted instead of named. */
    private record Alike(Term term, int visits, List<PromisedTask> tasks, ShutTimes shut) {}

    private final Catalogue catalogue;
    private final SeasonRules rules;
    private final LongestVisit longest;

    private final Map<Alike, VisitPlan> plans = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Alike, VisitPlan> eldest) {
            return size() > REMEMBERED;
        }
    };

    LaidOutYears(OwnCatalogue.Own own) {
        catalogue = own.catalogue();
        rules = own.seasons();
        longest = own.longestVisit();
    }

    Catalogue catalogue() {
        return catalogue;
    }

    PlannedYear of(YearToPlan year) {
        Map<UUID, UUID> standIns = new LinkedHashMap<>();
        List<PromisedTask> tasks = new ArrayList<>(year.tasks().size());
        for (PromisedTask task : year.tasks()) {
            UUID standIn = standIns.computeIfAbsent(task.equipmentId(), _ -> PlannedYear.standIn(standIns.size()));
            tasks.add(task.on(standIn));
        }
        Alike alike = new Alike(year.term(), year.visits(), tasks, year.shut());
        VisitPlan plan = remembered(alike);
        if (plan == null) {
            plan = plan(alike);
            remember(alike, plan);
        }
        return new PlannedYear(year, plan, List.copyOf(standIns.keySet()));
    }

    private synchronized @Nullable VisitPlan remembered(Alike year) {
        return plans.get(year);
    }

    private synchronized void remember(Alike year, VisitPlan plan) {
        plans.put(year, plan);
    }

    private VisitPlan plan(Alike year) {
        return VisitPlan.of(
                Promises.in(year.term(), year.tasks(), rules), year.shut(), year.visits(), year.term(), rules, longest);
    }
}
