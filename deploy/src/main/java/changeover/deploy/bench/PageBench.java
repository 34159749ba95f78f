package changeover.deploy.bench;

import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.Standing;
import changeover.billing.runs.BillingRuns;
import changeover.billing.runs.RunWork;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.deploy.Command;
import changeover.web.office.DocumentPages;
import io.agroal.api.AgroalDataSource;
import io.quarkus.qute.Engine;
import io.quarkus.qute.Template;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;

/**
 * The office's list of 50 documents, drawn as for a browser by the page's own code, over a bare Qute page of the same rows
 * by the same statement; and how many statements the page asks, counted by the server.
 */
@ApplicationScoped
public class PageBench implements Command {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    private static final int ROWS = 50;
    private static final String PATH = "/bench-billing/money/documents";
    private static final MultivaluedMap<String, String> ASKED = new MultivaluedHashMap<>();
    private static final int CALLS = 100;
    private static final int WARM_UP = 40;
    private static final Pattern CELL = Pattern.compile("<td class=\"money\">([^<]*)</td>");

    private static final String BARE = """
            <!doctype html><html lang="en"><head><meta charset="utf-8"><title>All documents</title></head><body>
            <table><thead><tr><th>Due</th><th>Invoice</th><th>Customer</th><th>Work</th><th>Amount</th></tr></thead><tbody>
            {#for row in rows}<tr><td>{row.dueDay}</td><td><a href="/x/money/invoices/{row.id}">{row.label}</a></td><td><a
            href="/x/money/customers/{row.customerId}">{row.customer}</a></td><td>{row.street}</td><td class="money">{amounts.get(row_index)}</td></tr>
            {/for}</tbody></table></body></html>""";

    private static final String STATEMENTS =
            "select coalesce(sum(generic_plans + custom_plans), 0) from pg_prepared_statements";

    @Inject
    BillingShop shops;

    @Inject
    BillingRuns runs;

    @Inject
    RunWork work;

    @Inject
    CurrentTenant current;

    @Inject
    People people;

    @Inject
    DocumentPages pages;

    @Inject
    InvoiceLists lists;

    @Inject
    Engine engine;

    @Inject
    AgroalDataSource datasource;

    @Inject
    EntityManager session;

    @Inject
    Visitor visitor;

    @Override
    public String words() {
        return "bench page";
    }

    @Override
    public void run(List<String> rest) throws Exception {
        UUID person = UUID.randomUUID();
        BillingShop.Shop shop = shops.open(DAY);
        shops.write(shop, 0, ROWS);
        current.run(shop.tenant(), person, () -> {
            people.add(Membership.begin(person, "Odile Roe", "odile@example.com", "en", Role.OWNER));
            return runs.start(DAY);
        });
        work.goOn();
        Template bare = engine.parse(BARE);
        Callable<String> ours = () -> visitor.of(
                person,
                PATH,
                () -> current.run(
                        shop.tenant(),
                        person,
                        () -> pages.documents(PATH, ASKED).render()));
        Callable<String> plain = () -> current.run(shop.tenant(), person, () -> plain(bare));
        long[] product = new long[CALLS];
        long[] plainly = new long[CALLS];
        for (int round = 0; round < WARM_UP; round++) {
            calls(ours, plain, product, plainly);
        }
        long statements = visitor.of(person, PATH, () -> current.run(shop.tenant(), person, () -> statements()));
        Ratios ratios = Ratios.ofTimes("page", statements <= 5 ? "1.4" : "0", statements <= 3 ? "1.15" : "0");
        for (int pair = 1; pair <= Ratios.PAIRS; pair++) {
            calls(ours, plain, product, plainly);
            ratios.add(middle(product), middle(plainly));
            System.out.println("page pair %d: p50 %d us, bare %d us"
                    .formatted(pair, middle(product) / 1000, middle(plainly) / 1000));
        }
        List<String> shown = cells(ours.call());
        boolean same = shown.equals(cells(plain.call()));
        System.out.println("page statements=" + statements + " warm-up=" + WARM_UP * CALLS);
        System.out.println(ratios.line(shown.size(), same && shown.size() == ROWS));
    }

    /** One of each in turn, so that both meet the same machine. */
    private static void calls(Callable<String> ours, Callable<String> plain, long[] product, long[] plainly)
            throws Exception {
        for (int call = 0; call < CALLS; call++) {
            product[call] = time(ours);
            plainly[call] = time(plain);
        }
    }

    private static long time(Callable<String> page) throws Exception {
        long from = System.nanoTime();
        var _ = page.call();
        return System.nanoTime() - from;
    }

    private static long middle(long[] times) {
        long[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private String plain(Template bare) {
        var rows = lists.rows(
                InvoiceFilter.standing(Standing.OPEN, Standing.LATE, Standing.PAID, Standing.CREDITED, Standing.CREDIT)
                        .page(0, 200),
                LocalDate.now(java.time.ZoneOffset.UTC));
        return bare.data("rows", rows)
                .data(
                        "amounts",
                        rows.stream()
                                .map(row -> row.open().format(Locale.CANADA))
                                .toList())
                .render();
    }

    /** What the page asks of a session that remembers nothing, once its statements are prepared on the server. */
    private long statements() throws SQLException {
        for (int time = 0; time < 10; time++) {
            session.clear();
            pages.documents(PATH, ASKED).render();
            asked();
        }
        long before = asked();
        session.clear();
        pages.documents(PATH, ASKED).render();
        return asked() - before - 1;
    }

    private long asked() throws SQLException {
        try (var connection = datasource.getConnection();
                var ask = connection.prepareStatement(STATEMENTS);
                ResultSet row = ask.executeQuery()) {
            row.next();
            return row.getLong(1);
        }
    }

    private static List<String> cells(String page) {
        return CELL.matcher(page).results().map(found -> found.group(1)).toList();
    }
}
