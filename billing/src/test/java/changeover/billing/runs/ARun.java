package changeover.billing.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.InvoiceChecks;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.words.Refused;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.function.Executable;

/** A business's run as tests start, look at and judge it. */
@ApplicationScoped
class ARun {

    static final LocalDate DAY = SomeDrafts.DAY;

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    BillingRuns runs;

    @Inject
    AgroalDataSource datasource;

    List<UUID> some(UUID tenant, int count) {
        return business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            List<Draft> all = new ArrayList<>();
            for (int at = 0; at < count; at++) {
                all.add(SomeDrafts.plan(customer, home, (at + 1) + ".00", "7.35"));
            }
            return drafts.write(all);
        });
    }

    UUID start(UUID tenant) {
        return business.in(tenant, () -> runs.start(DAY));
    }

    BillingRun find(UUID tenant, UUID run) {
        return business.in(tenant, () -> runs.find(run).orElseThrow());
    }

    void gapless(UUID tenant, int count) {
        assertEquals(
                "1 " + count + " " + count,
                business.in(
                        tenant,
                        () -> business.one(
                                "select min(number) || ' ' || max(number) || ' ' || count(distinct number) from invoice_issue")));
        assertEquals(
                "[0, 0, 0, 0]",
                business.in(tenant, () -> {
                            try (Connection connection = datasource.getConnection()) {
                                return InvoiceChecks.all(connection).stream()
                                        .map(InvoiceChecks.Found::bad)
                                        .toList();
                            }
                        })
                        .toString());
    }

    static String refused(Executable verb) {
        return assertThrows(Refused.class, verb).first().code();
    }
}
