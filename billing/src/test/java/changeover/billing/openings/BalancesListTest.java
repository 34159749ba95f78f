package changeover.billing.openings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.broughtfiles.BroughtFiles;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;

/** Sums from before come as they were written, and what is wrong with one is said beside the cell that is in the file. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BalancesListTest {

    private static final String TITLES = "customer,kind,since,amount,words\n";

    @Inject
    ABusiness business;

    @Inject
    BroughtFiles files;

    @Inject
    OpeningBalances openings;

    @Inject
    Prepaid prepaid;

    @Inject
    TakeOver takeOver;

    @Inject
    Today today;

    private Brought bring(LocalDate day, String... rows) {
        byte[] file = (TITLES + String.join("\n", rows)).getBytes(StandardCharsets.UTF_8);
        return files.bring(List.of(new BroughtFiles.Named("balances.csv", file)), day)
                .files()
                .getFirst()
                .brought();
    }

    private List<String> faults(LocalDate day, String... rows) {
        return bring(day, rows).faults().stream()
                .map(fault ->
                        fault.row() + " " + fault.column() + " " + fault.why().code())
                .toList();
    }

    @Test
    void words_are_kept_whole_or_refused() {
        business.in(business.quebec(), () -> {
            business.customer("Ida Roe");
            String longest = "w".repeat(200);
            assertEquals(
                    List.of("3 words text.too-long", "5 words text.too-long"),
                    faults(
                            today.day(),
                            "Ida Roe,owed,2025-11-03,100.00," + longest,
                            "Ida Roe,owed,2025-11-03,100.00," + longest + "w",
                            "Ida Roe,prepaid,2025-11-03,50.00," + longest,
                            "Ida Roe,prepaid,2025-11-03,50.00," + longest + "w"));
            assertEquals(
                    List.of(longest),
                    openings.all().stream().map(kept -> kept.opening().words()).toList());
            assertEquals(
                    List.of(longest),
                    prepaid.all().stream().map(kept -> kept.ahead().words()).toList());
        });
    }

    @Test
    void money_prepaid_waits_for_the_day_of_the_take_over() {
        business.in(business.quebec(), () -> {
            business.customer("Ida Roe");
            assertEquals(
                    List.of("2 since payment.day-to-come"),
                    faults(today.day().plusDays(20), "Ida Roe,prepaid,2025-11-03,50.00,Paid in spring"));
            assertEquals(List.of(), prepaid.all());
        });
    }

    @Test
    void two_who_bring_one_list_at_one_moment_bring_it_once() throws Exception {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            business.customer("Ida Roe");
            takeOver.on(today.day());
        });
        Callable<Brought> deed = () -> bring(
                today.day(),
                "Ida Roe,owed,2025-11-03,100.00,Belts of spring",
                "Ida Roe,prepaid,2025-11-03,50.00,Paid in spring");
        try (var other = Executors.newSingleThreadExecutor()) {
            Future<Brought> second = business.in(tenant, () -> {
                deed.call();
                Future<Brought> waiting = other.submit(() -> business.in(tenant, deed));
                assertThrows(TimeoutException.class, () -> waiting.get(1, TimeUnit.SECONDS));
                return waiting;
            });
            assertEquals(2, second.get(1, TimeUnit.MINUTES).unchanged());
        }
        business.in(tenant, () -> {
            assertEquals(1, openings.all().size());
            assertEquals(1, prepaid.all().size());
        });
    }
}
