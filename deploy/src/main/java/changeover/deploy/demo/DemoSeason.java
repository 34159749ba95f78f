package changeover.deploy.demo;

import changeover.contracts.Examples;
import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.Need;
import changeover.scheduling.dayplan.Needs;
import changeover.scheduling.dayplan.change.FittingIn;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.dayplan.season.SeasonQuestion;
import changeover.scheduling.dayplan.season.SeasonRuns;
import changeover.scheduling.dayplan.season.SeasonWork;
import changeover.scheduling.visits.VisitLists;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** The season to come, planned on the crew as it stands; what the roof needs; customers who were told their hour. */
@ApplicationScoped
class DemoSeason {

    private static final String ON_THE_ROOF = "rooftop-belts";

    @Inject
    CurrentTenant current;

    @Inject
    Seasons seasons;

    @Inject
    Needs needs;

    @Inject
    HoursTold told;

    @Inject
    FittingIn fitting;

    @Inject
    VisitLists lists;

    @Inject
    SeasonRuns runs;

    @Inject
    SeasonWork work;

    void plan(UUID tenant, UUID office, Examples.Shop shop, LocalDate today) {
        boolean french = shop.language().equals("fr");
        current.run(
                tenant,
                office,
                () -> needs.write(
                        ON_THE_ROOF,
                        new Need(2, Set.of(), null, null),
                        french ? "Personne ne monte seul sur un toit plat." : "Nobody goes up on a flat roof alone."));
        current.run(tenant, office, () -> tell(today));
        current.run(tenant, office, () -> move(today, french));
        Optional<UUID> run = current.run(tenant, office, () -> ask(today));
        boolean goesOn = run.isPresent();
        while (goesOn) {
            goesOn = work.turn(tenant);
        }
    }

    /** Every second customer of the coming days was told the hour. */
    private int tell(LocalDate today) {
        List<VisitLists.Row> coming =
                lists.between(Window.ofDays(today.plusDays(1), today.plusDays(7)), null, 0, 100).stream()
                        .filter(row -> row.day() != null && row.how() == null)
                        .toList();
        for (int at = 0; at < coming.size(); at += 2) {
            told.tell(coming.get(at).id());
        }
        return coming.size();
    }

    /** A customer who was told their hour asked for another day; it is proposed there, and not told yet. */
    private boolean move(LocalDate today, boolean french) {
        String why = french ? "Ils sont absents ce jour-là." : "They are away that day.";
        return lists.between(Window.ofDays(today.plusDays(1), today.plusDays(7)), null, 0, 100).stream()
                .filter(row -> row.day() != null && row.how() == null && told.isTold(row.id()))
                .findFirst()
                .map(row -> today.plusDays(1)
                        .datesUntil(today.plusDays(12))
                        .filter(day -> !day.equals(row.day()))
                        .anyMatch(day -> moveTo(row.id(), day, new Moving(Moving.By.CUSTOMER, why))))
                .orElse(false);
    }

    private boolean moveTo(UUID visit, LocalDate day, Moving moving) {
        return fitting.offers(visit, day).stream()
                .filter(offer -> offer.moved().isEmpty())
                .findFirst()
                .map(offer -> fitting.take(visit, day, FittingIn.shown(offer), moving))
                .isPresent();
    }

    /** Empty where nothing of the season waits. */
    private Optional<UUID> ask(LocalDate today) {
        return seasons.all().stream()
                .filter(one -> "cooling".equals(one.season().code()))
                .map(one -> question(one, today))
                .filter(runs::hasWork)
                .findFirst()
                .map(runs::start);
    }

    private static SeasonQuestion question(OwnSeason season, LocalDate today) {
        return SeasonQuestion.asItIs(season.id(), season.season().openingAt(today), today.plusDays(1));
    }
}
