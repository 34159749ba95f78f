package changeover.billing.costs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a visit at two kinds of machines took and used is shared over them by their minutes, to the cent. */
class AgainstPlanTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    private static PriceEntry price(ItemKind kind, String code, String cost) {
        return new PriceEntry(kind, code, Money.of("90.00", "CAD"), Money.of(cost, "CAD"), DAY.minusDays(9));
    }

    @Test
    void each_kind_has_its_share_of_minutes_and_parts() {
        CostBook book = new CostBook(
                new PriceBook(List.of(
                        price(ItemKind.LABOUR, PriceBook.HOUR, "57.00"), price(ItemKind.PART, "f-16", "10.01"))),
                List.of(),
                List.of(),
                Currency.getInstance("CAD"),
                null,
                AsTheCrowFlies.USUAL);
        Deal deal = new Deal(
                UUID.randomUUID(),
                1,
                UUID.randomUUID(),
                new Wording("Comfort", "Confort"),
                UUID.randomUUID(),
                "12 Rue des Pins",
                new Term(DAY.minusDays(20), DAY.plusDays(300)),
                24900,
                1,
                Map.of(),
                null);
        KeptVisit visit = new KeptVisit(
                UUID.randomUUID(),
                KeptVisit.How.PLANNED,
                null,
                deal,
                null,
                null,
                "",
                null,
                DAY,
                1,
                60,
                90,
                0,
                Map.of("boiler", 20, "water_heater", 40),
                List.of(new KeptVisit.Given("f-16", "filter", BigDecimal.ONE)),
                null);
        assertEquals(
                List.of("water_heater 40 60 57.00 6.67", "boiler 20 30 28.50 3.34"),
                AgainstPlan.of(List.of(visit), AgainstPlan.By.KIND, book).stream()
                        .map(line -> line.key() + " " + line.planned() + " " + line.actual() + " "
                                + line.cost().decimal() + " " + line.parts().decimal())
                        .toList());
        assertEquals(
                List.of("water_heater 40 60 57.00 6.67"),
                AgainstPlan.behind(List.of(visit), AgainstPlan.By.KIND, "water_heater", book).stream()
                        .map(line -> line.key() + " " + line.planned() + " " + line.actual() + " "
                                + line.cost().decimal() + " " + line.parts().decimal())
                        .toList());
        for (AgainstPlan.By by : AgainstPlan.By.values()) {
            for (AgainstPlan line : AgainstPlan.of(List.of(visit, visit), by, book)) {
                List<AgainstPlan> behind = AgainstPlan.behind(List.of(visit, visit), by, line.key(), book);
                assertEquals(
                        line.cost(),
                        Money.sum(behind.stream().map(AgainstPlan::cost).toList(), book.currency()));
                assertEquals(
                        line.parts(),
                        Money.sum(behind.stream().map(AgainstPlan::parts).toList(), book.currency()));
                assertEquals(
                        line.actual(),
                        behind.stream().mapToInt(AgainstPlan::actual).sum());
            }
        }
        assertEquals(
                1,
                AgainstPlan.behind(List.of(visit), AgainstPlan.By.KIND, null, book)
                        .size());
    }
}
