package changeover.scheduling.visits;

import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.NoLongerThisYear;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;

/** The year of an offer as it would be planned, for whoever is about to say yes. */
final class Forecast {

    private Forecast() {}

    /**
     * @param shut when the home is
     * @param fits what fits each machine, as its card says
     */
    static OfferForecast of(
            Term term,
            int visits,
            List<PromisedTask> tasks,
            ShutTimes shut,
            Map<UUID, Map<String, String>> fits,
            OwnCatalogue.Own own) {
        List<Promise> promises = Promises.in(term, tasks, own.seasons());
        VisitPlan plan = VisitPlan.of(promises, shut, visits, term, own.seasons(), own.longestVisit());
        return new OfferForecast(
                plan.visits().stream()
                        .map(visit -> new OfferForecast.Visit(
                                visit.window(), visit.minutes(), visit.tasks().size()))
                        .toList(),
                VisitsNeeded.of(OpenDays.of(promises, shut), own.longestVisit()).visits(),
                plan.visits().stream().mapToInt(PlannedVisit::minutes).sum(),
                plan.unkept().stream()
                        .map(unkept -> notKept(unkept, own.catalogue()))
                        .toList(),
                gone(term, tasks, own),
                parts(plan, fits, own.catalogue()));
    }

    private static OfferForecast.NotKept notKept(Unkept unkept, Catalogue catalogue) {
        Promise promise = unkept.promise();
        return new OfferForecast.NotKept(
                promise.equipmentId(),
                promise.taskCode(),
                catalogue.task(promise.taskCode()).wording(),
                promise.window(),
                unkept.why());
    }

    /** Each season once, however many tasks ask for it. */
    private static List<OfferForecast.Gone> gone(Term term, List<PromisedTask> tasks, OwnCatalogue.Own own) {
        Map<String, OfferForecast.Gone> gone = new LinkedHashMap<>();
        for (PromisedTask task : tasks) {
            for (NoLongerThisYear one : NoLongerThisYear.of(task.cadence(), term, own.seasons())) {
                gone.putIfAbsent(
                        one.season().code() + one.gone(),
                        new OfferForecast.Gone(
                                new Wording(one.season().nameEn(), one.season().nameFr()), one.gone(), one.next()));
            }
        }
        return List.copyOf(gone.values());
    }

    /** Looking uses nothing up: only doing and replacing do. Of each part as many as the machine holds. */
    private static List<OfferForecast.Part> parts(
            VisitPlan plan, Map<UUID, Map<String, String>> fits, Catalogue catalogue) {
        Map<String, BigDecimal> parts = new TreeMap<>();
        for (Promise promise : all(plan)) {
            if (promise.due().act() != Due.Act.CHECK) {
                catalogue.task(promise.taskCode()).parts().stream()
                        .filter(Task.PartUse::eachTime)
                        .forEach(use -> parts.merge(
                                use.part(),
                                use.quantity().multiply(count(use.part(), promise, fits, catalogue)),
                                BigDecimal::add));
            }
        }
        return parts.entrySet().stream()
                .map(part -> new OfferForecast.Part(part.getKey(), part.getValue()))
                .toList();
    }

    private static List<Promise> all(VisitPlan plan) {
        return Stream.concat(plan.visits().stream().flatMap(visit -> visit.tasks().stream()), plan.household().stream())
                .toList();
    }

    private static BigDecimal count(
            String part, Promise promise, Map<UUID, Map<String, String>> fits, Catalogue catalogue) {
        return BigDecimal.valueOf(catalogue.countOf(part, fits.getOrDefault(promise.equipmentId(), Map.of())));
    }
}
