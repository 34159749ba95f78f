package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.agreements.Offers;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A business bounds its visits: the years it sells from then on keep to it, those that stand do not move. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class LongestVisitTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 16);

    @Inject
    Shop shop;

    @Inject
    Businesses businesses;

    @Inject
    Offers offers;

    @Inject
    Years years;

    @Inject
    YearsOfHomes yearsOfHomes;

    private int bound(@Nullable Integer minutes) {
        BusinessProfile profile = businesses.profile();
        BusinessProfile.Facts facts = profile.facts();
        profile.rewrite(new BusinessProfile.Facts(
                facts.tagline(),
                facts.street(),
                facts.city(),
                facts.region(),
                facts.postal(),
                facts.country(),
                facts.phone(),
                facts.email(),
                facts.licence(),
                facts.gstNumber(),
                facts.qstNumber(),
                facts.smallSupplier(),
                facts.carryOpenSeason(),
                facts.invoiceTermsDays(),
                facts.theme(),
                minutes));
        businesses.keep();
        return profile.version();
    }

    private YearOfHome year(UUID home) {
        return yearsOfHomes.of(home, new Window(DAY, DAY.plusMonths(18)), DAY);
    }

    private static List<String> said(YearOfHome year) {
        return year.visits().stream().map(SoldYearTest::said).toList();
    }

    @Test
    void a_year_sold_under_the_bound_keeps_to_it_and_names_what_does_not_fit() {
        UUID tenant = shop.open("CA-ON");
        shop.in(tenant, () -> bound(50));
        OfferForecast forecast = shop.in(tenant, () -> {
            var offer = offers.forHome(shop.home("ON"), shop.plan().id(), DAY, DAY);
            return years.forecast(offer.homeId(), offer.term(), offer.plan().visits(), offer.promises());
        });
        assertEquals(3, forecast.needed());
        assertEquals(1, forecast.unkept().size());
        YearOfHome sold = shop.in(tenant, () -> {
            UUID home = shop.home("ON");
            shop.sell(home, shop.plan().id(), DAY);
            return year(home);
        });
        assertTrue(sold.visits().stream().allMatch(visit -> visit.minutes() <= 50));
        assertEquals(1, sold.unkept().size());
        assertTrue(sold.unkept().getFirst().why().en().contains("of 50\u00a0minutes at most"));
        assertEquals(
                forecast.unkept().getFirst().why(), sold.unkept().getFirst().why());
    }

    @Test
    void a_task_longer_than_the_bound_has_its_own_visit_and_its_line_says_so() {
        UUID tenant = shop.open("CA-ON");
        YearOfHome sold = shop.in(tenant, () -> {
            bound(30);
            UUID home = shop.home("ON");
            shop.sell(home, shop.plan().id(), DAY);
            return year(home);
        });
        List<YearOfHome.Line> longer = sold.visits().stream()
                .filter(visit -> visit.minutes() > 30)
                .peek(visit -> assertEquals(1, visit.tasks().size()))
                .flatMap(visit -> visit.tasks().stream())
                .toList();
        assertEquals(1, longer.size());
        assertTrue(longer.getFirst().reason().en().endsWith("it has a visit of its own."));
        assertTrue(longer.getFirst().reason().fr().endsWith("elle a sa propre visite."));
        assertEquals(2, sold.unkept().size());
    }

    @Test
    void visits_that_stand_do_not_move_when_the_bound_changes() {
        UUID tenant = shop.open("CA-ON");
        UUID[] sold = new UUID[2];
        List<String> before = shop.in(tenant, () -> {
            sold[0] = shop.home("ON");
            sold[1] = shop.sell(sold[0], shop.plan().id(), DAY);
            return said(year(sold[0]));
        });
        shop.in(tenant, () -> bound(30));
        assertEquals(0, shop.in(tenant, () -> years.plan(List.of(sold[1]))));
        assertEquals(before, shop.in(tenant, () -> said(year(sold[0]))));
    }
}
