package changeover.deploy.bench;

import changeover.billing.runs.BillingRuns;
import changeover.billing.runs.RunWork;
import changeover.contracts.tenants.CurrentTenant;
import changeover.deploy.Command;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Invoices a second of a billing run, from the start of the run to the last stored paper, over bare OpenPDF pages and
 * multi-row inserts of the same invoices.
 */
@ApplicationScoped
public class BillingBench implements Command {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    /** Invoices of each side before the first pair counts: until then most of the time goes to the compiler. */
    private static final int WARM_UP = 20_000;

    private static final String PRODUCT = """
            select count(*) || ' ' || (select count(*) from invoice_line) || ' ' || (select count(*) from document)
                || ' ' || sum(hashtextextended(number || '|' || tax_minor || '|' || total_minor, 0)) from invoice_issue""";

    private static final String BARE = """
            select count(*) || ' ' || (select count(*) from bare_line) || ' ' || count(pdf)
                || ' ' || sum(hashtextextended(number || '|' || gst + qst || '|' || total, 0)) from bare_invoice""";

    @Inject
    BillingShop shops;

    @Inject
    BillingRuns runs;

    @Inject
    RunWork work;

    @Inject
    CurrentTenant current;

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url = "";

    @ConfigProperty(name = "quarkus.flyway.username")
    String user = "";

    @ConfigProperty(name = "quarkus.flyway.password")
    String password = "";

    @Override
    public String words() {
        return "bench billing";
    }

    @Override
    public void run(List<String> rest) throws Exception {
        int count = rest.size() == 2 && rest.getFirst().equals("--size") ? Integer.parseInt(rest.get(1)) : 2_000;
        int warm = Math.max(2, WARM_UP / count);
        Ratios ratios = Ratios.ofRates("billing", "0.6", "1.2");
        BillingShop.Shop shop = shops.open(DAY);
        boolean same = true;
        try (Connection owner = DriverManager.getConnection(url, user, password)) {
            BareBilling bare = new BareBilling(owner);
            for (int pair = -warm; pair < Ratios.PAIRS; pair++) {
                int first = (pair + warm) * count;
                shops.write(shop, first, count);
                long before = pair % 2 == 0 ? 0 : time(() -> bare.run(first, count));
                long product = time(() -> product(shop));
                long plain = pair % 2 == 0 ? time(() -> bare.run(first, count)) : before;
                same &= ask(owner, PRODUCT).equals(ask(owner, BARE));
                if (pair >= 0) {
                    ratios.add(plain, product);
                }
                System.out.println("billing %s: %d invoices/s, bare %d/s"
                        .formatted(
                                pair < 0 ? "warm-up" : "pair " + (pair + 1),
                                count * 1_000_000_000L / product,
                                count * 1_000_000_000L / plain));
            }
            System.out.println(ratios.line((long) (Ratios.PAIRS + warm) * count, same));
        }
    }

    private void product(BillingShop.Shop shop) {
        current.run(shop.tenant(), CurrentTenant.NOBODY, () -> runs.start(DAY));
        work.goOn();
    }

    private interface Work {
        void run() throws Exception;
    }

    private static long time(Work work) throws Exception {
        long from = System.nanoTime();
        work.run();
        return System.nanoTime() - from;
    }

    private static String ask(Connection owner, String sql) throws SQLException {
        try (Statement statement = owner.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getString(1);
        }
    }
}
