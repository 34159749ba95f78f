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
import java.util.stream.Stream;

/** The year of an offer as it would be planned, for whoever is about to say yes. */
final class Forecast {

    private Forecast() {}

    /** @param shut when the home is */
    static OfferForecast of(Term term, int visits, List<PromisedTask> tasks, ShutTimes shut, OwnCatalogue.Own own) {
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
                parts(plan, own.catalogue()));
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

    /** Looking uses nothing up: only doing and replacing do. */
    private static List<OfferForecast.Part> parts(VisitPlan plan, Catalogue catalogue) {
        Map<String, BigDecimal> parts = new TreeMap<>();
        Stream.concat(plan.visits().stream().flatMap(visit -> visit.tasks().stream()), plan.household().stream())
                .filter(promise -> promise.due().act() != Due.Act.CHECK)
                .flatMap(promise -> catalogue.task(promise.taskCode()).parts().stream())
                .filter(Task.PartUse::eachTime)
                .forEach(use -> parts.merge(use.part(), use.quantity(), BigDecimal::add));
        return parts.entrySet().stream()
                .map(part -> new OfferForecast.Part(part.getKey(), part.getValue()))
                .toList();
    }
}
