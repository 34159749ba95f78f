package changeover.deploy.bench;

import changeover.contracts.calendar.Days;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.AtTheCounter;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.deploy.Command;
import changeover.scheduling.dayplan.Due;
import changeover.scheduling.visits.SeasonRun;
import changeover.scheduling.visits.VisitLists;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The same work for one business among 10, 100, 1,000 and 10,000: the office's lists of a day, and a day that passes. The
 * median of the worst size over that of the best, each over a bare statement that knows no business and ran in between; and
 * a small business's slowest hundredth while a big one bills, over the same while nobody does. It ends after so many minutes
 * whatever it reached; fewer businesses than were asked for are missed.
 */
@ApplicationScoped
public class TenantsBench implements Command {

    private static final LocalDate OPENED = LocalDate.of(2026, 12, 1);
    private static final LocalDate DAY = LocalDate.of(2027, 5, 3);
    private static final int HOMES = 2;
    private static final int CALLS = 150;
    private static final int WARM_UP = 1_500;
    private static final int LONGEST_WARM_UP = 12;
    private static final long A_MILLION = 1_000_000;
    private static final int MOST = 10_000;

    /** After so many minutes nothing more is begun, and the last line says what was reached. */
    private static final int MINUTES = 25;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    SeasonRun season;

    @Inject
    Due due;

    @Inject
    VisitLists lists;

    @Inject
    Days days;

    @Inject
    BusyNeighbour neighbour;

    @Inject
    AtTheCounter counter;

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url = "";

    @ConfigProperty(name = "quarkus.flyway.username")
    String user = "";

    @ConfigProperty(name = "quarkus.flyway.password")
    String password = "";

    private final Map<UUID, LocalDate> passed = new HashMap<>();
    private final SplittableRandom chance = new SplittableRandom(27);
    private String expected = "";
    private boolean same = true;
    private int calls;

    @Override
    public String words() {
        return "bench tenants";
    }

    @Override
    public void run(List<String> rest) throws Exception {
        int most = option(rest, "--size", MOST);
        Instant end = Instant.now().plus(Duration.ofMinutes(option(rest, "--minutes", MINUTES)));
        UUID pattern = UUID.randomUUID();
        current.run(pattern, CurrentTenant.NOBODY, () -> businesses.open(facts(), OPENED));
        try (Connection owner = DriverManager.getConnection(url, user, password)) {
            SeasonShop.fill(owner, pattern, HOMES);
            season.run(pattern);
            ManyBusinesses many = new ManyBusinesses(owner, pattern);
            still(owner);
            List<long[]> sizes = new ArrayList<>();
            boolean inTime = true;
            for (int size = 10; inTime && size <= most; size *= 10) {
                Duration left = Duration.between(Instant.now(), end).dividedBy(2);
                inTime = many.growTo(size, left);
                if (inTime) {
                    sizes.add(rounds(many.all(), owner, size));
                } else {
                    System.out.println("tenants " + size + ": they could not be made in the time that is left");
                }
            }
            List<UUID> all = many.all();
            Ratios slowest = neighbour.beside(() -> one(all), end);
            String beside = slowest.line(all.size(), same);
            System.out.println(beside.replaceFirst("tenants", "tenants, the slowest hundredth beside a billing run:"));
            boolean goal = beside.endsWith("goal");
            boolean good = goal || beside.endsWith("good");
            goal &= inTime;
            good &= inTime;
            Ratios ratios = Ratios.ofTimes("tenants", good ? "1.2" : "0", goal ? "1.10" : "0");
            for (int pair = 0; pair < Ratios.PAIRS; pair++) {
                int round = pair;
                ratios.add(
                        sizes.stream().mapToLong(one -> one[round]).max().orElse(0),
                        sizes.stream().mapToLong(one -> one[round]).min().orElse(1));
            }
            same &= count(owner) == calls;
            System.out.println(ratios.line(all.size(), same));
        }
    }

    /** {@code --size N} and {@code --minutes N}, in any order. */
    private static int option(List<String> rest, String name, int usual) {
        int at = rest.indexOf(name);
        return at < 0 || at + 1 == rest.size() ? usual : Integer.parseInt(rest.get(at + 1));
    }

    /** Millionths of the bare statement's median that the work's median takes, in each of seven rounds. */
    private long[] rounds(List<UUID> all, Connection owner, int size) throws Exception {
        long[] rounds = new long[Ratios.PAIRS];
        try (PreparedStatement bare = owner.prepareStatement("select sum(number), max(words) from bench_still")) {
            warmUp(all, bare);
            for (int round = 0; round < rounds.length; round++) {
                long[] product = new long[CALLS];
                long[] still = new long[CALLS];
                for (int call = 0; call < CALLS; call++) {
                    product[call] = one(all);
                    still[call] = bare(bare);
                }
                rounds[round] = A_MILLION * middle(product) / middle(still);
                System.out.println("tenants %d, round %d: p50 %d us a business, bare %d us"
                        .formatted(size, round + 1, middle(product) / 1000, middle(still) / 1000));
            }
        }
        return rounds;
    }

    /** Until the work takes no less time than before: the compiler has looked at it all. */
    private void warmUp(List<UUID> all, PreparedStatement bare) throws SQLException {
        long[] times = new long[WARM_UP];
        long before = Long.MAX_VALUE;
        for (int again = 0; again < LONGEST_WARM_UP; again++) {
            for (int call = 0; call < WARM_UP; call++) {
                times[call] = one(all);
                bare(bare);
            }
            long middle = middle(times);
            if (middle > before - before / 50) {
                return;
            }
            before = middle;
        }
    }

    /** One business's work, by chance whose, as a request that came through the door; its answer is everybody's. */
    private long one(List<UUID> all) {
        UUID tenant = all.get(chance.nextInt(all.size()));
        LocalDate next = passed.merge(tenant, OPENED, (before, _) -> before.plusDays(1));
        counter.came();
        long from = System.nanoTime();
        String answer = current.run(tenant, CurrentTenant.NOBODY, this::lists);
        int days = this.days.letPass(tenant, next);
        long took = System.nanoTime() - from;
        expected = expected.isEmpty() ? answer : expected;
        same &= answer.equals(expected) && days == 1;
        calls++;
        return took;
    }

    private String lists() {
        return due.counts(DAY) + " " + due.withoutDay(DAY, 0, 50).size() + " "
                + lists.between(Window.ofDays(DAY, DAY.plusDays(27)), null, 0, 50)
                        .size();
    }

    private static void still(Connection owner) throws SQLException {
        try (Statement statement = owner.createStatement()) {
            statement.execute("create table bench_still as select g as number, md5(g::text) as words from"
                    + " generate_series(1, 20000) g");
            statement.execute("analyze bench_still");
        }
    }

    private static long bare(PreparedStatement bare) throws SQLException {
        long from = System.nanoTime();
        try (ResultSet row = bare.executeQuery()) {
            row.next();
        }
        return System.nanoTime() - from;
    }

    private static long count(Connection owner) throws SQLException {
        try (Statement statement = owner.createStatement();
                ResultSet row = statement.executeQuery("select count(*) from day_passed")) {
            row.next();
            return row.getLong(1);
        }
    }

    private static long middle(long[] times) {
        long[] sorted = times.clone();
        Arrays.sort(sorted);
        return Math.max(1, sorted[sorted.length / 2]);
    }

    private static NewBusiness facts() {
        return new NewBusiness(
                "bench", "Bench", "1 Example Street", Place.of("CA-QC"), "en", null, null, null, null, null, true);
    }
}
