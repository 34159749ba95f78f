package changeover.billing.costs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.costs.AgainstPlan.By;
import changeover.billing.costs.PlanResults.Over;
import changeover.billing.ledger.ASoldPlan.Sold;
import changeover.billing.pricing.Cause;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * A visit of an hour that two make, and four filters that are posted: an hour costs 57.00, a trip 21.00, a filter 15.75, overhead
 * a fifth.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TwoAndSentTest extends PricedBooks {

    private static final LocalDate MAY = LocalDate.of(2026, 5, 4);
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 10);

    private UUID person(String name) {
        UUID id = UUID.randomUUID();
        business.execute("insert into membership (person_id, role, name, email, language) values ('" + id
                + "', 'technician', '" + name + "', '" + id + "@example.com', 'fr')");
        return id;
    }

    private UUID forTwo(Sold sold, UUID ida, UUID ben) {
        UUID visit = plans.visit(sold, "plan", 60, null);
        business.execute("insert into visit_need (visit_id, people, why) values ('" + visit + "', 2, 'A long ladder')");
        business.execute("insert into appointment (visit_id, technician_id, day, starts, ends) values ('" + visit
                + "', '" + ida + "', '" + MAY + "', '09:00', '10:00')");
        business.execute("insert into appointment_second (visit_id, technician_id, day, starts, ends) values ('" + visit
                + "', '" + ben + "', '" + MAY + "', '09:00', '10:00')");
        plans.closed(sold, visit, MAY, "done");
        business.execute("update closure set technician_id = '" + ida + "' where visit_id = '" + visit + "'");
        return visit;
    }

    /** Two hours are 114.00, one priced trip 21.00, a fifth of 135.00 is 27.00. Planned 60 and 15 of set-up for each: 150 minutes, 142.50. */
    @Test
    void a_visit_by_two_costs_both_hours_and_each_has_a_line() {
        business.in(business.quebec(), () -> {
            priced();
            UUID ida = person("Ida Roe");
            UUID ben = person("Ben Aubin");
            forTwo(plans.of("Anselm Birk", 0, 0), ida, ben);
            Results on = results.on(MAY, Over.TERM);
            assertEquals(cad("114.00"), on.causes().get(Cause.TASKS));
            assertEquals(cad("21.00"), on.causes().get(Cause.TRAVEL));
            assertEquals(cad("162.00"), on.cost());
            assertEquals(1, on.deals().getFirst().visits());
            List<KeptVisit> visits = kept.until(MAY).visits();
            AgainstPlan all = AgainstPlan.of(visits, By.PLAN, books.read()).getFirst();
            assertEquals("1 150 142.50 120 114.00", said(all));
            List<AgainstPlan> each = AgainstPlan.of(visits, By.TECHNICIAN, books.read());
            assertEquals(
                    List.of("Ben Aubin 1 75 71.25 60 57.00", "Ida Roe 1 75 71.25 60 57.00"),
                    each.stream()
                            .map(line -> line.one().technician() + " " + said(line))
                            .sorted()
                            .toList());
            assertEquals(
                    "Ben Aubin 1 75 71.25 60 57.00",
                    AgainstPlan.behind(visits, By.TECHNICIAN, ben.toString(), books.read()).stream()
                            .map(line -> line.one().technician() + " " + said(line))
                            .findFirst()
                            .orElseThrow());
            assertEquals(150, kept.past(MAY, 15).getFirst().planned());
            assertEquals(120, kept.past(MAY, 15).getFirst().actual());
        });
    }

    @Test
    void a_task_that_needs_two_is_foreseen_for_two_and_one_who_came_alone_took_half() {
        business.in(business.quebec(), () -> {
            priced();
            business.execute("insert into task_need (task_code, people, why) values ('coil', 2, 'A long ladder')");
            Sold sold = plans.of("Anselm Birk", 0, 0);
            plans.closed(sold, plans.visit(sold, "plan", 60, null), MAY, "done");
            assertEquals(
                    "1 150 142.50 60 57.00",
                    said(AgainstPlan.of(kept.until(MAY).visits(), By.AGREEMENT, books.read())
                            .getFirst()));
        });
    }

    /** Four at 15.75 are 63.00, with a fifth 75.60; foreseen are two at each of two visits, 31.50 each. */
    @Test
    void what_was_posted_counts_against_its_agreement_on_the_day_it_left() {
        business.in(business.quebec(), () -> {
            priced();
            Sold sold = plans.of("Anselm Birk", 0, 4);
            plans.closed(sold, plans.visit(sold, "plan", 60, null), MAY, "done");
            plans.closed(sold, plans.visit(sold, "plan", 60, null), MAY, "done");
            business.execute(
                    "insert into part_given (home_id, agreement_id, operation_id, part_code, part_kind, quantity,"
                            + " place_id, how, day) select '" + sold.home() + "', '" + sold.id()
                            + "', uuidv7(), 'f-16', 'filter', 4, id, 'posted', '" + JUNE
                            + "' from stock_place where kind = 'shelf' limit 1");
            assertEquals(
                    cad("0.00"),
                    results.on(JUNE.minusDays(1), Over.TERM).causes().get(Cause.PARTS));
            Results on = results.on(JUNE, Over.TERM);
            assertEquals(cad("63.00"), on.causes().get(Cause.PARTS));
            // Two visits at 78.00 and a fifth are 187.20.
            assertEquals(cad("262.80"), on.cost());
            assertEquals(2, on.deals().getFirst().visits());
            AgainstPlan all = AgainstPlan.of(kept.until(JUNE).visits(), By.AGREEMENT, books.read())
                    .getFirst();
            assertEquals(cad("63.00"), all.partsForeseen());
            assertEquals(cad("63.00"), all.parts());
            assertEquals(2, all.visits());
            KeptVisits.Kept june = kept.between(JUNE.withDayOfMonth(1), JUNE.withDayOfMonth(30));
            AgainstPlan sent = AgainstPlan.behind(june.visits(), By.PLAN, null, books.read())
                    .getFirst();
            assertEquals("0 0 0.00 0 0.00", said(sent));
            assertEquals(cad("63.00"), sent.parts());
            assertEquals(List.of(), AgainstPlan.of(june.visits(), By.KIND, books.read()));
            assertEquals(
                    0,
                    kept.past(JUNE, 15).getFirst().parts().get("filter").compareTo(BigDecimal.ONE),
                    "each of the two visits gave its share of the four");
        });
    }

    private static String said(AgainstPlan line) {
        return line.visits() + " " + line.planned() + " " + line.foreseen().decimal() + " " + line.actual() + " "
                + line.cost().decimal();
    }
}
