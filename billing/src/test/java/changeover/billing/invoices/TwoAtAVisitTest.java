package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Two who were at a visit for an hour are charged two hours and one trip. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TwoAtAVisitTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 21);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Prices prices;

    private UUID person(String name) {
        UUID id = UUID.randomUUID();
        business.execute("insert into membership (person_id, role, name, email, language) values ('" + id
                + "', 'technician', '" + name + "', '" + id + "@example.com', 'fr')");
        return id;
    }

    private String charged(UUID home, UUID plan, String kind, UUID by, int minutes, int extra, UUID... crew) {
        UUID visit = agreement.visit(home, plan);
        if (crew.length > 0) {
            String hours = "', '" + DAY + "', '09:00', '10:00')";
            String into = " (visit_id, technician_id, day, starts, ends) values ('" + visit + "', '";
            business.execute("insert into appointment" + into + crew[0] + hours);
            if (crew.length > 1) {
                business.execute("insert into appointment_second" + into + crew[1] + hours);
            }
        }
        closed.fire(
                new VisitClosed(visit, home, plan, kind, null, by, DAY, minutes, minutes, extra, List.of(), List.of()));
        if (crew.length > 0) {
            business.execute("delete from appointment where visit_id = '" + visit + "'");
        }
        return business.one("""
                select string_agg(item_code || ' ' || trim_scale(quantity) || ' ' || net_minor || ' ' || why_fr, ', '
                         order by position)
                  from invoice_line where visit_id = '%s'""".formatted(visit));
    }

    @Test
    void each_persons_minutes_are_charged_and_the_trip_once() {
        business.in(business.quebec(), () -> {
            prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("120.00", "CAD"), null, DAY));
            prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, Money.of("35.00", "CAD"), null, DAY));
            UUID payer = business.customer("Ida Roe");
            UUID home = business.home(payer, "QC");
            UUID ida = person("Ida Roe");
            UUID ben = person("Ben Aubin");
            String none = " Non couvert par une formule.";
            String one = "hour 1 12000 60 minutes, comptées jusqu’au quart d’heure suivant." + none
                    + ", visit 1 3500 Non couvert par une formule.";
            assertEquals(one, charged(home, null, "call", ida, 60, 0));
            assertEquals(one, charged(home, null, "call", ida, 60, 0, ida));
            String two = "hour 2 24000 120 minutes de 2 personnes, comptées jusqu’au quart d’heure suivant." + none
                    + ", visit 1 3500 Non couvert par une formule.";
            assertEquals(two, charged(home, null, "call", ida, 60, 0, ida, ben));
            assertEquals(one, charged(home, null, "call", ben, 60, 0, ida, ben), "who went along closed it alone");
            UUID plan = agreement.inForce(home, payer, DAY.minusDays(20), 1);
            assertEquals(
                    "promised 120 0 Compris dans votre formule Confort. Les minutes de 2 personnes., hour 20 0 Compris\u00a0: il"
                            + " restait 30 minutes de travaux additionnels à la formule, 20 servent ici. Les minutes de 2"
                            + " personnes.",
                    charged(home, plan, "plan", ida, 70, 10, ida, ben));
        });
    }
}
