package changeover.billing.estimates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.estimates.EstimateFacts.OtherItem;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;

/** What was accepted comes onto the draft of the visit that does it, once, and is taxed as it was agreed. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AcceptedLinesTest {

    @Inject
    ABusiness business;

    @Inject
    AnEstimate some;

    @Inject
    Estimates estimates;

    @Inject
    Offering offering;

    @Inject
    Answering answering;

    @Inject
    EstimateWorks works;

    @Inject
    BooksHold books;

    @Inject
    Today today;

    private String lines(UUID visit) {
        return business.one("select string_agg(concat_ws(' ', l.kind, l.net_minor, l.work, l.contract_form), ', '"
                + " order by l.position) from invoice_line l where l.visit_id = '" + visit + "'");
    }

    /** A new heat pump for one sum, offered and accepted. */
    private UUID heatPump(UUID home) {
        UUID id = estimates.write(new NewEstimate(
                home,
                null,
                null,
                null,
                new EstimateFacts(
                        "Poser une nouvelle thermopompe",
                        60,
                        true,
                        List.of(),
                        List.of(
                                new OtherItem(
                                        "Thermopompe",
                                        BigDecimal.ONE,
                                        "C62",
                                        AnEstimate.cad("4200.00"),
                                        Work.INSTALLATION),
                                new OtherItem(
                                        "Support",
                                        new BigDecimal("2"),
                                        "C62",
                                        AnEstimate.cad("60.00"),
                                        Work.INSTALLATION)),
                        today.day().plusDays(20),
                        null,
                        Work.INSTALLATION,
                        ContractForm.LUMP_SUM)));
        offering.offer(id);
        answering.answer(id, some.yes(ConsentChannel.CALL));
        return id;
    }

    @Test
    void the_lines_in_own_words_come_once_and_the_work_is_taxed_as_agreed() {
        business.in(business.quebec(), () -> {
            some.prices();
            UUID home = business.home(business.customer("Ida Roe", "fr", "each"), "QC");
            UUID id = heatPump(home);
            assertEquals(
                    ContractForm.LUMP_SUM,
                    estimates.facts(estimates.find(id).orElseThrow()).form());
            UUID first = works.makeVisit(id, today.day(), 60);
            UUID second = works.makeVisit(id, today.day(), 60);
            some.close(first, home, 60, "1");
            assertEquals(
                    "labour 9600 installation lump_sum, part 2495 installation lump_sum,"
                            + " travel 4500 installation lump_sum, other 420000 installation lump_sum,"
                            + " other 12000 installation lump_sum",
                    lines(first));
            some.close(second, home, 60, "1");
            assertEquals(
                    "labour 9600 installation lump_sum, part 2495 installation lump_sum,"
                            + " travel 4500 installation lump_sum",
                    lines(second));
            UUID other = some.visit(home, "extra");
            some.close(other, home, 60, "1");
            assertEquals(
                    "labour 9600 repair separate, part 2495 repair separate, travel 4500 repair separate",
                    lines(other));
            books.check();
        });
    }

    @Test
    void a_line_is_taxed_as_its_own_estimate_was_agreed() {
        business.in(business.quebec(), () -> {
            some.prices();
            UUID home = business.home(business.customer("Ida Roe", "fr", "each"), "QC");
            UUID visit = works.makeVisit(heatPump(home), today.day(), 60);
            works.bind(some.accepted(home), visit);
            some.close(visit, home, 60, "1");
            assertEquals(
                    "labour 9600 repair separate, part 2495 repair separate, travel 4500 repair separate,"
                            + " other 1500 repair separate, other 420000 installation lump_sum,"
                            + " other 12000 installation lump_sum",
                    lines(visit));
            books.check();
        });
    }

    @Test
    void of_two_visits_that_are_closed_at_one_moment_one_asks_for_the_lines() throws Exception {
        UUID tenant = business.quebec();
        UUID home = business.in(tenant, () -> {
            some.prices();
            return business.home(business.customer("Ida Roe", "fr", "each"), "QC");
        });
        UUID id = business.in(tenant, () -> heatPump(home));
        UUID first = business.in(tenant, () -> works.makeVisit(id, today.day(), 60));
        UUID second = business.in(tenant, () -> works.makeVisit(id, today.day(), 60));
        try (var other = Executors.newSingleThreadExecutor()) {
            Future<?> waiting = business.in(tenant, () -> {
                some.close(first, home, 60, "1");
                Future<?> started = other.submit(() -> business.in(tenant, () -> some.close(second, home, 60, "1")));
                assertThrows(TimeoutException.class, () -> started.get(1, TimeUnit.SECONDS));
                return started;
            });
            waiting.get(1, TimeUnit.MINUTES);
        }
        business.in(tenant, () -> {
            assertEquals(
                    "2",
                    business.one("select count(*) from invoice_line where kind = 'other' and visit_id is not null"));
            books.check();
        });
    }
}
