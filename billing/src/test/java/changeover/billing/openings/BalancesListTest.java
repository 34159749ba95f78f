package changeover.billing.openings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.broughtfiles.BroughtFiles;
import changeover.contracts.takeover.Brought;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
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
    Today today;

    private List<String> faults(LocalDate takeOver, String... rows) {
        byte[] file = (TITLES + String.join("\n", rows)).getBytes(StandardCharsets.UTF_8);
        BroughtFiles.Looked looked = files.bring(List.of(new BroughtFiles.Named("balances.csv", file)), takeOver);
        Brought brought = looked.files().getFirst().brought();
        return brought.faults().stream()
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
}
