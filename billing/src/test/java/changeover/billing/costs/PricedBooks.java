package changeover.billing.costs;

import changeover.billing.ABusiness;
import changeover.billing.ledger.ASoldPlan;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.Overhead;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;

/** A shop whose hour costs 57.00, a trip 21.00, a filter 15.75, with 15 minutes of set-up and a fifth of overhead. */
abstract class PricedBooks {

    static final LocalDate JANUARY = LocalDate.of(2026, 1, 1);

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Prices prices;

    @Inject
    Parts parts;

    @Inject
    RunningCosts running;

    @Inject
    CostBooks books;

    @Inject
    KeptVisits kept;

    @Inject
    PlanResults results;

    void priced() {
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, cad("112.00"), cad("57.00"), JANUARY));
        prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, cad("45.00"), cad("21.00"), JANUARY));
        prices.set(new PriceEntry(ItemKind.PART, "f-16", cad("38.00"), cad("15.75"), JANUARY));
        parts.keep(new KnownPart("f-16", new Wording("Filter", "Filtre"), "C62", "filter", null));
        running.set(new RunningCost.Facts(JANUARY, 15, new Overhead.Percent(BigDecimal.valueOf(20)), null, null));
    }

    static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
