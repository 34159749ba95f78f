package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.AgreementLists;
import changeover.contracts.agreements.AgreementState;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.AgreementsInWords;
import changeover.contracts.agreements.RenewalRow;
import changeover.contracts.agreements.Renewals;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.calendar.DayPassed;
import changeover.contracts.calendar.Days;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RenewalTest {

    static final LocalDate SOLD = LocalDate.of(2026, 4, 1);

    @Inject
    Shop shop;

    @Inject
    Agreements agreements;

    @Inject
    Renewals renewals;

    @Inject
    AgreementLists lists;

    @Inject
    AgreementsInWords inWords;

    @Inject
    YearsOfHomes years;

    @Inject
    Days days;

    @Inject
    Heard heard;

    @ApplicationScoped
    static class Heard {
        private final List<DayPassed> days = new CopyOnWriteArrayList<>();

        List<DayPassed> days() {
            return days;
        }

        void hear(@Observes DayPassed day) {
            days.add(day);
        }
    }

    @Test
    void an_agreement_is_on_the_list_inside_the_notice_window_of_quebec_and_its_renewal_keeps_each_season_once() {
        UUID tenant = shop.open("CA-QC");
        UUID home = shop.in(tenant, () -> shop.home("QC"));
        UUID first = shop.in(tenant, () -> shop.sell(home, shop.plan().id(), SOLD));
        assertEquals(List.of(), list(tenant, LocalDate.of(2026, 12, 30)));
        assertEquals(List.of(RenewalRow.Standing.DUE), list(tenant, LocalDate.of(2026, 12, 31)));
        assertEquals(List.of(RenewalRow.Standing.DUE), list(tenant, LocalDate.of(2027, 1, 30)));
        assertEquals(List.of(RenewalRow.Standing.LATE), list(tenant, LocalDate.of(2027, 1, 31)));

        LocalDate offered = LocalDate.of(2027, 1, 15);
        UUID second = shop.in(tenant, () -> renewals.offer(first, offered).id());
        assertEquals(List.of(RenewalRow.Standing.OFFERED), list(tenant, offered));
        assertEquals(
                "agreement.renewal-stands",
                assertThrows(Refused.class, () -> shop.in(tenant, () -> renewals.offer(first, offered)))
                        .first()
                        .code());
        shop.in(tenant, () -> {
            agreements.accept(second, Shop.yes(LocalDate.of(2027, 2, 1), SaleChannel.DISTANCE));
            return 0;
        });
        assertEquals(List.of(), list(tenant, LocalDate.of(2027, 2, 2)));
        Agreement renewed = shop.in(tenant, () -> agreements.find(second).orElseThrow());
        assertEquals(LocalDate.of(2027, 4, 1), renewed.term().from());
        assertEquals(LocalDate.of(2028, 3, 31), renewed.term().last());
        assertEquals(
                List.of(
                        "2026-05-01 .. 2026-06-15: test-cool test-off",
                        "2026-09-01 .. 2026-11-15: test-heat test-pad",
                        "2027-05-01 .. 2027-06-15: test-cool test-off",
                        "2027-09-01 .. 2027-11-15: test-heat test-pad"),
                shop.in(tenant, () -> years.of(home, new Window(SOLD, SOLD.plusYears(2)), SOLD)).visits().stream()
                        .map(SoldYearTest::said)
                        .toList());
        assertEquals(
                Map.of(AgreementState.IN_FORCE, 1, AgreementState.ACCEPTED, 1),
                shop.in(tenant, () -> lists.counts(LocalDate.of(2027, 3, 31))));
        assertEquals(
                Map.of(AgreementState.OVER, 1, AgreementState.IN_FORCE, 1),
                shop.in(tenant, () -> lists.counts(LocalDate.of(2027, 4, 1))));
        assertEquals(
                List.of(2),
                shop.in(tenant, () -> lists.page(AgreementState.IN_FORCE, LocalDate.of(2027, 4, 1), 0, 10)).stream()
                        .map(row -> row.number())
                        .toList());
        assertEquals(
                2,
                shop.in(tenant, () -> lists.page(null, LocalDate.of(2027, 4, 1), 0, 10))
                        .size());
    }

    private List<RenewalRow.Standing> list(UUID tenant, LocalDate day) {
        return shop.in(tenant, () -> renewals.list(day)).stream()
                .map(RenewalRow::standing)
                .toList();
    }

    @Test
    void what_was_promised_is_said_in_words_for_each_machine() {
        UUID tenant = shop.open("CA-ON");
        var details = shop.in(
                tenant, () -> inWords.of(shop.sell(shop.home("ON"), shop.plan().id(), SOLD)));
        assertEquals(3, details.machines().size());
        assertEquals(
                List.of("at each cooling changeover", "at each heating changeover"),
                details.machines().getFirst().promises().stream()
                        .map(promise -> promise.often().en())
                        .toList());
    }

    @Test
    void days_pass_once_each_and_in_order() {
        UUID tenant = shop.open("CA-ON");
        assertEquals(3, days.letPass(tenant, Shop.OPENED.plusDays(2)));
        assertEquals(0, days.letPass(tenant, Shop.OPENED.plusDays(2)));
        assertEquals(1, days.letPass(tenant, Shop.OPENED.plusDays(3)));
        assertEquals(
                Shop.OPENED.datesUntil(Shop.OPENED.plusDays(4)).toList(),
                heard.days().stream()
                        .filter(day -> day.tenantId().equals(tenant.toString()))
                        .map(DayPassed::day)
                        .toList());
    }
}
