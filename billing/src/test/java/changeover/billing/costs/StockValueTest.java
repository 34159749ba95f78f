package changeover.billing.costs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What lies in stock at the end of a day is worth what it cost on that day. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StockValueTest {

    @Inject
    ABusiness business;

    @Inject
    Prices prices;

    @Inject
    Parts parts;

    @Inject
    StockValue stock;

    /** Ten filters at 15.75 are 157.50; after two and a half are gone 7.5 at 16.05, half-up 120.38 (120.375). Pads have no cost. */
    @Test
    void every_movement_up_to_the_day_counts_at_the_cost_of_that_day() {
        business.in(business.quebec(), () -> {
            LocalDate may = LocalDate.of(2026, 5, 1);
            parts.keep(new KnownPart("f-16", new Wording("Filter", "Filtre"), "C62", "filter", null));
            prices.set(new PriceEntry(ItemKind.PART, "f-16", cad("38.00"), cad("15.75"), may));
            prices.set(new PriceEntry(ItemKind.PART, "f-16", cad("39.00"), cad("16.05"), may.plusMonths(1)));
            move("f-16", "10", may);
            move("f-16", "-2.5", may.plusMonths(1));
            move("pad", "4", may.plusMonths(1));
            check(may.minusDays(1), "0.00", 0);
            check(may, "157.50", 0);
            check(may.plusMonths(1).minusDays(1), "157.50", 0);
            check(may.plusMonths(1), "120.38", 1);
        });
    }

    private void check(LocalDate day, String value, int without) {
        StockValue.On on = stock.on(day);
        assertEquals(value, on.value().decimal());
        assertEquals(without, on.withoutCost().size());
    }

    private void move(String part, String quantity, LocalDate day) {
        business.execute("insert into stock_movement (part_code, place_id, quantity, kind, day) select '" + part
                + "', id, " + quantity + ", 'count', '" + day + "' from stock_place where kind = 'shelf' limit 1");
    }

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
