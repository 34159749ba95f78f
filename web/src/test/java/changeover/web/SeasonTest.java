package changeover.web;

import changeover.contracts.Examples;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * A year of one home to the cent. Taxes by hand, half up, each on the document's sum: GST 5 % and QST 9.975 % (Revenu
 * Québec, « Calcul des taxes »), HST 13 % in Ontario (Canada Revenue Agency, GST/HST rates by province). Days by the
 * seasons of the catalogue: cooling 1 April to 15 June, humidifier shut-down 1 May to 15 June, heating 1 September to 15
 * November.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SeasonTest {

    @Inject
    ASeason season;

    @Inject
    SpringInQuebec spring;

    @Inject
    AutumnInQuebec autumn;

    @Inject
    YearInOntario ontario;

    @AfterEach
    void the_day_is_today_again() {
        season.isOver();
    }

    @Test
    void a_home_in_quebec_lives_through_its_year_and_begins_the_next() {
        spring.opens(Examples.LISIERE, "2026-03-20");
        UUID plan = season.plan(spring.shop, "249.00", 1, OneHomesStory.TASKS);
        UUID agreement = spring.isSoldAtADistance(plan);
        spring.aCallBeforeTheTermOwesItsFullPrice();
        UUID visit = spring.theSpringVisit();
        spring.isCorrectedBeforeTheInvoice(visit);
        spring.isPaidTooMuchAndGetsACredit();
        autumn.goesOnFrom(spring);
        autumn.theHouseholdDoesItsPart();
        autumn.nobodyOpensInAutumn(agreement);
        autumn.theNextYearBegins(autumn.isOfferedTheNextYear(agreement, plan));
    }

    @Test
    void a_home_in_ontario_is_kept_at_once_pays_in_two_parts_and_moves_away() {
        ontario.opens(Examples.KILN_LANE, "2026-10-20");
        UUID agreement = ontario.isSoldAtTheCounterInTwoInstalments();
        ontario.theAutumnVisitIsPaidInCash();
        ontario.theHouseholdMovesAway(agreement);
    }
}
