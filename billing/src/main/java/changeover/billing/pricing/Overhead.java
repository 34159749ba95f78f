package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.math.BigDecimal;

/** Rent, office, vans, insurance: laid on the work as a part of what it costs, or as an amount for each hour of it. */
public sealed interface Overhead {

    /** @param percent of all other costs of the plan */
    record Percent(BigDecimal percent) implements Overhead {}

    /** @param hour for each hour on site and on the road */
    record AnHour(Money hour) implements Overhead {}

    default Money on(Money costs, int minutes) {
        return switch (this) {
            case Percent(BigDecimal percent) -> costs.percent(percent);
            case AnHour(Money hour) -> hour.fraction(minutes, 60);
        };
    }
}
