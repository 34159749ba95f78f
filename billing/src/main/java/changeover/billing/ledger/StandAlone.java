package changeover.billing.ledger;

import changeover.billing.ledger.EarnedOn.Basis;
import changeover.billing.ledger.Promised.Earned;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What each promise of a plan would cost alone: a task its minutes at the hour's price, a part its own price, minutes kept ready
 * the same, and readiness for repairs as much as one hour. Where the price book says nothing an assumption stands, and is said.
 */
record StandAlone(List<Promised> promised, Basis basis) {

    /** A task of a visit, in minutes. */
    record Task(String id, int minutes) {}

    /** A kind of part, so many in the term. */
    record Part(String kind, BigDecimal quantity) {}

    /** What an agreement promises. */
    record Facts(List<Task> tasks, List<Part> parts, int readyMinutes, boolean repairs) {}

    private static final int HOUR = 60;
    private static final long ASSUMED_MINUTE = 100;

    /**
     * @param hour the price of an hour of labour; null where the price book has none
     * @param part the price of one part by its kind; a kind that is missing has none
     */
    static StandAlone of(Facts facts, @Nullable Money hour, Map<String, Money> part, Currency currency) {
        Money anHour = hour == null || hour.isZero() ? new Money(HOUR * ASSUMED_MINUTE, currency) : hour;
        boolean assumed = !anHour.equals(hour);
        List<Promised> promised = new ArrayList<>();
        for (Task task : facts.tasks()) {
            promised.add(new Promised(task.id(), anHour.fraction(task.minutes(), HOUR), Earned.WHEN_DONE));
        }
        for (Part one : facts.parts()) {
            Money price = Optional.ofNullable(part.get(one.kind())).orElseGet(() -> anHour.fraction(1, 4));
            assumed |= !part.containsKey(one.kind());
            for (int piece = 1; piece <= pieces(one.quantity()); piece++) {
                promised.add(new Promised(piece(one.kind(), piece), price, Earned.WHEN_DONE));
            }
        }
        if (facts.readyMinutes() > 0) {
            promised.add(new Promised("ready", anHour.fraction(facts.readyMinutes(), HOUR), Earned.BY_DAY));
        }
        if (facts.repairs()) {
            assumed = true;
            promised.add(new Promised("repairs", anHour, Earned.BY_DAY));
        }
        boolean something = promised.stream().anyMatch(one -> one.alone().isPositive());
        if (!something) {
            Promised days = new Promised("days", anHour, Earned.BY_DAY);
            return new StandAlone(List.of(days), Basis.DAYS);
        }
        return new StandAlone(List.copyOf(promised), assumed ? Basis.ASSUMED : Basis.PRICES);
    }

    static int pieces(BigDecimal quantity) {
        return quantity.setScale(0, RoundingMode.CEILING).intValueExact();
    }

    static String piece(String kind, int piece) {
        return "part " + kind + " " + piece;
    }
}
