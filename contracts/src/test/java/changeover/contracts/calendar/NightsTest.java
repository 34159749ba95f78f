package changeover.contracts.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.Test;

/** Nights over several machines: each day of each business once and in order, whatever fails or dies. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class NightsTest {

    private static final int MACHINES = 4;
    private static final int BUSINESSES = Boolean.getBoolean("changeover.deep") ? 1_000 : 12;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Nights nights;

    @Inject
    DaysSeen seen;

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url;

    @ConfigProperty(name = "quarkus.datasource.username")
    String user;

    @ConfigProperty(name = "quarkus.datasource.password")
    String password;

    @ConfigProperty(name = "quarkus.flyway.username")
    String owner;

    @ConfigProperty(name = "quarkus.flyway.password")
    String ownersPassword;

    /** A business that opened three days ago: four days wait. */
    private UUID open() {
        UUID tenant = UUID.randomUUID();
        current.run(
                tenant,
                CurrentTenant.NOBODY,
                () -> businesses.open(
                        new NewBusiness(
                                "night-" + tenant.toString().substring(0, 12),
                                "Northlamp",
                                "1 Kiln Lane, Port Ambrose",
                                Place.of("CA-ON"),
                                "en",
                                null,
                                null,
                                null,
                                null,
                                null,
                                true),
                        LocalDate.now(java.time.ZoneId.of("America/Toronto")).minusDays(3)));
        return tenant;
    }

    private List<LocalDate> four(UUID tenant) {
        LocalDate last = current.run(tenant, CurrentTenant.NOBODY, () -> today.day());
        return IntStream.rangeClosed(0, 3)
                .mapToObj(back -> last.minusDays(3 - back))
                .toList();
    }

    @Test
    void four_machines_share_a_night_and_every_day_passes_once_in_order()
            throws InterruptedException, ExecutionException {
        List<UUID> all = IntStream.range(0, BUSINESSES).mapToObj(_ -> open()).toList();
        assertTrue(nights.waiting().containsAll(all));
        List<Future<Nights.Night>> shares = new ArrayList<>();
        try (var machines = Executors.newFixedThreadPool(MACHINES)) {
            Callable<Nights.Night> machine = () -> nights.pass(all);
            IntStream.range(0, MACHINES).forEach(_ -> shares.add(machines.submit(machine)));
        }
        int days = 0;
        for (Future<Nights.Night> share : shares) {
            days += share.get().days();
        }
        // A business that was in another's hand when it was looked at is left to that one, or to the next night.
        days += nights.pass(all).days();
        assertEquals(4 * BUSINESSES, days);
        all.forEach(tenant -> assertEquals(four(tenant), seen.of(tenant)));
        assertTrue(nights.waiting().stream().noneMatch(all::contains));
        assertEquals(0, nights.pass(all).days());
    }

    @Test
    void what_a_machine_had_in_hand_when_it_died_is_done_once_by_another() throws SQLException {
        UUID tenant = open();
        try (Connection dying = DriverManager.getConnection(url, user, password);
                Connection other = DriverManager.getConnection(url, user, password);
                Statement work = dying.createStatement();
                Statement axe = other.createStatement()) {
            dying.setAutoCommit(false);
            work.execute("select set_config('app.tenant', '" + tenant + "', true)");
            work.execute("select pg_advisory_xact_lock(hashtextextended('day passed " + tenant + "', 77))");
            work.execute("insert into day_passed (day) values ('" + four(tenant).getFirst() + "')");
            assertEquals(0, nights.pass(List.of(tenant)).days(), "another machine is at it");
            int gone;
            try (ResultSet pid = work.executeQuery("select pg_backend_pid()")) {
                pid.next();
                gone = pid.getInt(1);
            }
            // The database ends what it holds for a machine whose connection breaks; here it is broken from outside.
            axe.execute("select pg_terminate_backend(" + gone + ", 10000)");
            assertEquals(4, nights.pass(List.of(tenant)).days());
        }
        assertEquals(four(tenant), seen.of(tenant));
    }

    @Test
    void a_day_that_fails_holds_up_no_other_business_and_is_tried_again() throws SQLException {
        UUID ours = open();
        UUID theirs = open();
        seen.fail(theirs);
        Nights.Night night = nights.pass(List.of(ours, theirs));
        assertEquals(List.of(4, 1), List.of(night.days(), night.failed()));
        assertEquals(List.of(), seen.of(theirs));
        seen.mend(theirs);
        assertEquals(4, nights.pass(List.of(ours, theirs)).days());
        assertEquals(four(theirs), seen.of(theirs));
        try (Connection house = DriverManager.getConnection(url, owner, ownersPassword);
                Statement ask = house.createStatement();
                ResultSet row = ask.executeQuery(
                        "select count(*) from day_passed where tenant_id = '" + theirs + "' and took_ms is not null")) {
            row.next();
            assertEquals(4, row.getInt(1));
        }
    }
}
