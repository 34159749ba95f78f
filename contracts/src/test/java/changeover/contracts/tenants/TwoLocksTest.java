package changeover.contracts.tenants;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TwoLocksTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    Doors doors;

    @Inject
    AgroalDataSource datasource;

    private UUID open(String slug) {
        UUID tenant = UUID.randomUUID();
        current.run(
                tenant,
                CurrentTenant.NOBODY,
                () -> businesses.open(
                        new NewBusiness(
                                slug,
                                "Northlamp " + slug,
                                "1 Kiln Lane, Port Ambrose",
                                Place.of("CA-ON"),
                                "en",
                                null,
                                null,
                                null,
                                null,
                                null,
                                true),
                        DAY));
        return tenant;
    }

    @Test
    void a_business_sees_its_own_people_and_nobody_elses() throws Exception {
        UUID first = open("first-lamp");
        UUID second = open("second-lamp");
        UUID person = UUID.randomUUID();
        current.run(
                first,
                person,
                () -> people.add(Membership.begin(person, "Ida Roe", "ida@example.com", "en", Role.OWNER)));

        assertEquals(1, current.run(first, person, () -> people.all().size()));
        assertEquals(0, current.run(second, person, () -> people.all().size()));
        assertEquals(0, current.run(second, person, () -> count("select count(*) from membership")));
        assertEquals(1, current.run(first, person, () -> count("select count(*) from membership")));
        assertEquals("first-lamp", doors.of("first-lamp", person).orElseThrow().slug());
        assertTrue(doors.of("second-lamp", person).isEmpty());
    }

    @Test
    void one_transaction_is_for_one_business() {
        UUID first = open("third-lamp");
        UUID second = open("fourth-lamp");
        assertThrows(
                IllegalStateException.class,
                () -> current.run(
                        first, CurrentTenant.NOBODY, () -> current.run(second, CurrentTenant.NOBODY, () -> 1)));
    }

    @Test
    void what_the_database_refuses_becomes_a_sentence() {
        open("fifth-lamp");
        var failure = assertThrows(Exception.class, () -> open("fifth-lamp"));
        assertEquals(
                "constraint.business_slug_taken",
                Constraints.refusal(failure).map(Refusal::code).orElseThrow());
    }

    @Test
    void a_row_of_another_business_is_refused_by_the_database_itself() {
        UUID first = open("sixth-lamp");
        UUID second = open("seventh-lamp");
        assertThrows(
                Exception.class,
                () -> current.run(first, CurrentTenant.NOBODY, () -> {
                    try (var connection = datasource.getConnection();
                            var insert = connection.prepareStatement(
                                    "insert into day_passed (tenant_id, day) values (?, current_date)")) {
                        insert.setObject(1, second);
                        return insert.executeUpdate();
                    }
                }));
    }

    private int count(String sql) throws Exception {
        try (var connection = datasource.getConnection();
                var statement = connection.createStatement();
                var row = statement.executeQuery(sql)) {
            row.next();
            return row.getInt(1);
        }
    }
}
