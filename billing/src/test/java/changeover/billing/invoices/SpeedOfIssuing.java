package changeover.billing.invoices;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.AgreementSold;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.money.Money;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** By hand only ({@code -Dtest=SpeedOfIssuing}): how fast a season's sale and a billing run are. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SpeedOfIssuing {

    private static final int DOCUMENTS = 3_000;
    private static final int BATCH = 100;

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    WhenAgreementSold sold;

    @Test
    void a_billing_run() {
        UUID tenant = business.quebec();
        List<UUID> ids = business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            List<Draft> all = new ArrayList<>();
            for (int at = 0; at < DOCUMENTS; at++) {
                all.add(SomeDrafts.plan(
                        customer, home, "1.00", "2.00", "3.00", "4.00", "5.00", "6.00", "7.00", "8.00"));
            }
            long began = System.nanoTime();
            List<UUID> made = drafts.write(all);
            said("drafts", DOCUMENTS, began);
            return made;
        });
        for (int round = 0; round < 3; round++) {
            int from = round * DOCUMENTS / 3;
            long began = System.nanoTime();
            for (int at = from; at < from + DOCUMENTS / 3; at += BATCH) {
                List<UUID> batch = ids.subList(at, at + BATCH);
                business.in(tenant, () -> invoices.issue(batch, SomeDrafts.DAY));
            }
            said("issued", DOCUMENTS / 3, began);
        }
    }

    @Test
    void a_season_of_sales() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            List<AgreementSold.Sold> all = new ArrayList<>();
            for (int at = 0; at < 300; at++) {
                UUID home = business.home(customer, "QC");
                UUID id = agreement.inForce(home, customer, SomeDrafts.DAY, 4);
                all.add(new AgreementSold.Sold(
                        id,
                        home,
                        customer,
                        SomeDrafts.DAY,
                        SomeDrafts.DAY.plusYears(1),
                        Money.of("249.00", "CAD"),
                        4,
                        SomeDrafts.DAY,
                        SaleChannel.COUNTER,
                        false,
                        "fr"));
            }
            long began = System.nanoTime();
            sold.write(new AgreementSold(all));
            said("sold", 300, began);
        });
    }

    private static void said(String what, int count, long began) {
        long micros = (System.nanoTime() - began) / 1000;
        System.out.println(what + " " + count + " in " + micros / 1000 + " ms, " + micros / count + " µs each");
    }
}
