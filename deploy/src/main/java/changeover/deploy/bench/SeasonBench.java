package changeover.deploy.bench;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.deploy.Command;
import changeover.scheduling.visits.SeasonRun;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The season of 10,000 agreements over COPY of the same rows, and the same season once more. */
@ApplicationScoped
public class SeasonBench implements Command {
    private static final List<String> TABLES =
            List.of("year_planned", "visit", "visit_task", "household_task", "unkept_promise");

    private static final String ROWS = "select (select count(*) from visit) + (select count(*) from visit_task)"
            + " + (select count(*) from household_task) + (select count(*) from unkept_promise) + (select count(*) from year_planned)";

    /** Everything but the ids and the time of writing. */
    private static final String SUM = """
            select (select coalesce(sum(hashtextextended(concat_ws('|', a.number, v.window_from, v.window_until, v.minutes, v.kind), 0)), 0)
                      from visit v join agreement a on a.id = v.agreement_id)
                || ' ' ||
                   (select coalesce(sum(hashtextextended(concat_ws('|', a.number, t.task_code, t.due_from, t.due_until, t.minutes,
                        t.wording_en, t.reason_fr, t.position, v.window_from, t.body), 0)), 0)
                      from visit_task t join visit v on v.id = t.visit_id join agreement a on a.id = v.agreement_id)""";

    @Inject
    SeasonRun season;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url = "";

    @ConfigProperty(name = "quarkus.flyway.username")
    String user = "";

    @ConfigProperty(name = "quarkus.flyway.password")
    String password = "";

    private final UUID tenant = UUID.randomUUID();
    private boolean same = true;

    @Override
    public String words() {
        return "bench season";
    }

    @Override
    public void run(List<String> rest) throws Exception {
        System.out.println(measure("season", size(rest), Ratios.ofTimes("season", "1.2", "0.85")));
    }

    static int size(List<String> rest) {
        return rest.size() == 2 && rest.getFirst().equals("--size") ? Integer.parseInt(rest.get(1)) : 10_000;
    }

    /** Seven pairs after one pair to warm up, the two sides in turn first. */
    String measure(String name, int agreements, Ratios ratios) throws Exception {
        open();
        try (Connection owner = DriverManager.getConnection(url, user, password)) {
            SeasonShop.fill(owner, tenant, agreements);
            Copied copied = new Copied(owner, TABLES);
            season.run(tenant);
            String expected = copied.ask(SUM);
            long rows = Long.parseLong(copied.ask(ROWS));
            copied.keep();
            for (int pair = 0; pair <= Ratios.PAIRS; pair++) {
                Pair times = pair(copied, expected, rows, pair % 2 == 0);
                if (pair > 0) {
                    ratios.add(name.equals("season") ? times.product() : times.again(), times.bare());
                }
                System.out.println("%s %s: season %d ms, again %d ms, COPY %d ms"
                        .formatted(
                                name,
                                pair == 0 ? "warm-up" : "pair " + pair,
                                times.product(),
                                times.again(),
                                times.bare()));
            }
            copied.forget();
            return ratios.line(rows, same);
        }
    }

    private record Pair(long product, long again, long bare) {}

    private Pair pair(Copied copied, String expected, long rows, boolean productFirst) throws Exception {
        long bare = productFirst ? 0 : bare(copied, expected, rows);
        copied.clear();
        long product = time(() -> season.run(tenant));
        check(copied, expected, rows);
        long again = time(() -> season.run(tenant));
        check(copied, expected, rows);
        return new Pair(product, again, productFirst ? bare(copied, expected, rows) : bare);
    }

    private long bare(Copied copied, String expected, long rows) throws Exception {
        copied.clear();
        long bare = time(copied::copy);
        check(copied, expected, rows);
        return bare;
    }

    private void check(Copied copied, String expected, long rows) throws SQLException {
        same &= copied.ask(SUM).equals(expected) && Long.parseLong(copied.ask(ROWS)) == rows;
    }

    private interface Work {
        void run() throws Exception;
    }

    private static long time(Work work) throws Exception {
        long from = System.nanoTime();
        work.run();
        return Duration.ofNanos(System.nanoTime() - from).toMillis();
    }

    private void open() {
        NewBusiness facts = new NewBusiness(
                "bench", "Bench", "1 Example Street", Place.of("CA-QC"), "en", null, null, null, null, null, true);
        current.run(tenant, CurrentTenant.NOBODY, () -> businesses.open(facts, LocalDate.of(2026, 12, 1)));
    }
}
