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

/** A call that is closed: its minutes before eight and after four have a rate of their own. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class NightMinutesTest {

    private static final LocalDate TUESDAY = LocalDate.of(2026, 4, 7);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Prices prices;

    private String lines(String kind, String arrived, String left, int minutes) {
        UUID home = business.home(business.customer("Ida Roe"), "QC");
        UUID visit = agreement.visit(home, null);
        UUID technician = UUID.randomUUID();
        business.execute("insert into closure (visit_id, home_id, technician_id, day, arrived_at, left_at, minutes,"
                + " minutes_planned, extra_minutes, received_by, closed_at) values ('" + visit + "', '" + home + "', '"
                + technician + "', '" + TUESDAY + "', " + arrived + ", " + left + ", " + minutes
                + ", 60, 0, 'Ida Roe', now())");
        closed.fire(new VisitClosed(
                visit, home, null, kind, null, technician, TUESDAY, minutes, 60, 0, List.of(), List.of()));
        return business.one("""
                select string_agg(item_code || ' ' || trim_scale(quantity) || ' ' || net_minor, ', ' order by position)
                  from invoice_line where visit_id = '%s'""".formatted(visit));
    }

    @Test
    void a_calls_minutes_outside_working_hours_are_billed_at_the_after_hours_rate() {
        business.in(business.quebec(), () -> {
            price(PriceBook.HOUR, "96.00");
            String early = "'2026-04-07 06:40-04'";
            String later = "'2026-04-07 08:40-04'";
            assertEquals("hour 2 19200", lines("call", early, later, 120));
            price(PriceBook.AFTER_HOURS, "144.00");
            assertEquals("hour 0.75 7200, after-hours 1.5 21600", lines("call", early, later, 120));
            assertEquals("hour 2 19200", lines("extra", early, later, 120));
            assertEquals("hour 1 9600", lines("call", "null", later, 60));
            assertEquals("after-hours 2 28800", lines("call", "'2026-04-07 23:00-04'", "'2026-04-08 01:00-04'", 120));
        });
    }

    private void price(String item, String price) {
        prices.set(new PriceEntry(ItemKind.LABOUR, item, Money.of(price, "CAD"), null, TUESDAY));
    }
}
