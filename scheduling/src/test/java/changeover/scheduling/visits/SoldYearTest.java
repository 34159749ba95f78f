package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SoldYearTest {

    @Inject
    Shop shop;

    @Inject
    Agreements agreements;

    @Inject
    Offers offers;

    @Inject
    YearsOfHomes yearsOfHomes;

    @Inject
    Years years;

    @Inject
    EntityManager rows;

    /** Sells on the day and says each visit as "first day .. last day: tasks". */
    private void check(LocalDate day, String... expected) {
        UUID tenant = shop.open("CA-ON");
        List<String> said = shop.in(tenant, () -> {
            UUID home = shop.home("ON");
            shop.sell(home, shop.plan().id(), day);
            YearOfHome year = yearsOfHomes.of(home, new Window(day, day.plusMonths(18)), day);
            assertEquals(List.of(), year.unkept());
            return year.visits().stream().map(SoldYearTest::said).toList();
        });
        assertEquals(List.of(expected), said);
    }

    static String said(YearOfHome.Going going) {
        return going.window().from() + " .. " + going.window().last() + ": "
                + going.tasks().stream().map(YearOfHome.Line::taskCode).collect(Collectors.joining(" "));
    }

    @Test
    void a_plan_sold_in_the_open_heating_season_keeps_it_and_leaves_the_next_opening_to_the_next_term() {
        check(
                LocalDate.of(2026, 10, 20),
                "2026-10-20 .. 2026-11-15: test-heat test-pad",
                "2027-05-01 .. 2027-06-15: test-cool test-off");
    }

    @Test
    void a_plan_sold_the_day_after_the_season_closed_gets_both_changeovers_of_the_next_year() {
        check(
                LocalDate.of(2026, 11, 16),
                "2027-05-01 .. 2027-06-15: test-cool test-off",
                "2027-09-01 .. 2027-11-15: test-heat test-pad");
    }

    @Test
    void a_plan_sold_in_midwinter_begins_with_the_cooling_changeover() {
        check(
                LocalDate.of(2027, 1, 31),
                "2027-05-01 .. 2027-06-15: test-cool test-off",
                "2027-09-01 .. 2027-11-15: test-heat test-pad");
    }

    @Test
    void a_plan_sold_in_the_open_cooling_season_keeps_it() {
        check(
                LocalDate.of(2027, 5, 20),
                "2027-05-20 .. 2027-06-15: test-cool test-off",
                "2027-09-01 .. 2027-11-15: test-heat test-pad");
    }

    @Test
    void the_household_gets_its_own_dated_list() {
        UUID tenant = shop.open("CA-ON");
        LocalDate day = LocalDate.of(2026, 11, 16);
        List<YearOfHome.OwnTask> own = shop.in(tenant, () -> {
            UUID home = shop.home("ON");
            shop.sell(home, shop.plan().id(), day);
            return yearsOfHomes.of(home, new Window(day, day.plusYears(1)), day).household();
        });
        assertEquals(12, own.size());
        assertEquals("replace", own.getFirst().act());
        assertEquals(day, own.getFirst().dueOn());
        assertEquals("check", own.get(1).act());
    }

    @Test
    void the_offer_says_which_season_of_this_year_is_over() {
        UUID tenant = shop.open("CA-ON");
        LocalDate day = LocalDate.of(2026, 11, 16);
        OfferForecast forecast = shop.in(tenant, () -> {
            var offer = offers.forHome(shop.home("ON"), shop.plan().id(), day, day);
            return years.forecast(offer.homeId(), offer.term(), offer.plan().visits(), offer.promises());
        });
        assertEquals(2, forecast.visits().size());
        assertEquals(2, forecast.needed());
        assertEquals(115, forecast.minutes());
        assertEquals(
                List.of("cooling changeover", "heating changeover", "humidifier shut-down"),
                forecast.gone().stream()
                        .map(gone -> gone.season().en())
                        .sorted()
                        .toList());
    }

    @Test
    void a_sale_at_a_home_in_quebec_is_refused_and_at_the_counter_it_is_made() {
        UUID tenant = shop.open("CA-QC");
        LocalDate day = LocalDate.of(2026, 10, 20);
        UUID offered = shop.in(tenant, () -> {
            Agreement agreement =
                    agreements.offer(offers.forHome(shop.home("QC"), shop.plan().id(), day, day));
            return agreement.id();
        });
        for (SaleChannel channel : List.of(SaleChannel.HOME, SaleChannel.ELSEWHERE)) {
            Refused refused = assertThrows(
                    Refused.class,
                    () -> shop.in(tenant, () -> {
                        agreements.accept(offered, Shop.yes(day, channel));
                        return 0;
                    }));
            assertEquals("agreement.channel-refused", refused.first().code());
        }
        assertEquals(0L, count(tenant, "select count(*) from visit"));
        shop.in(tenant, () -> {
            agreements.accept(offered, Shop.yes(day, SaleChannel.COUNTER));
            return 0;
        });
        assertEquals(2L, count(tenant, "select count(*) from visit"));
    }

    @Test
    void a_season_of_three_hundred_is_planned_at_once_and_the_same_again_adds_no_row() {
        UUID tenant = shop.open("CA-ON");
        LocalDate day = LocalDate.of(2026, 11, 16);
        UUID plan = shop.in(tenant, () -> shop.plan().id());
        var sold = new ArrayList<UUID>();
        for (int number = 0; number < 300; number++) {
            sold.add(shop.in(
                    tenant,
                    () -> agreements
                            .offer(offers.forHome(shop.home("ON"), plan, day, day))
                            .id()));
        }
        shop.in(tenant, () -> {
            agreements.acceptAll(sold.stream()
                    .map(id -> new Agreements.Accepting(id, Shop.yes(day, SaleChannel.COUNTER)))
                    .toList());
            return sold;
        });
        assertEquals(600L, count(tenant, "select count(*) from visit"));
        assertEquals(1200L, count(tenant, "select count(*) from visit_task"));
        assertEquals(3600L, count(tenant, "select count(*) from household_task"));
        assertEquals(0, shop.in(tenant, () -> years.plan(sold)));
        assertEquals(600L, count(tenant, "select count(*) from visit"));
        assertEquals(1200L, count(tenant, "select count(*) from visit_task"));
        assertEquals(300L, count(tenant, "select max(number) from agreement"));
    }

    private long count(UUID tenant, String sql) {
        return shop.in(tenant, () -> ((Number) rows.createNativeQuery(sql).getSingleResult()).longValue());
    }
}
