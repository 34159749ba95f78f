package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftsTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Test
    void drafts_are_written_with_their_lines_and_sums() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            drafts.write(List.of(
                    SomeDrafts.plan(customer, home, "249.00"), SomeDrafts.plan(customer, home, "60.00", "40.00")));
            assertEquals("34900", business.one("select sum(subtotal_minor) from invoice"));
            assertEquals("34900", business.one("select sum(net_minor) from invoice_line"));
            assertEquals("3", business.one("select count(*) from invoice_line"));
        });
    }
}
