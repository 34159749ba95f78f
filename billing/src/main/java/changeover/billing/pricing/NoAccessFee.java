package changeover.billing.pricing;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;

/**
 * We came on the day and hour that were given, and nobody let us in: the trip costs its own fee where the business asks one.
 * No plan takes anything off it. Coming back for our own work is never charged.
 */
public final class NoAccessFee {

    private static final Wording WORDS =
            new Wording("Trip without access to the home", "Déplacement sans accès au domicile");

    private NoAccessFee() {}

    /** @param day on which we were at the door */
    public static Optional<Charge> of(LocalDate day, VisitKind kind, PriceBook prices, Currency currency) {
        if (kind == VisitKind.RETURN) {
            return Optional.empty();
        }
        Wording why = new Wording(
                "We came on the day that was given, and nobody let us in.",
                "Nous sommes venus le jour convenu et personne ne nous a ouvert.");
        return prices.on(ItemKind.TRAVEL, PriceBook.NO_ACCESS, day)
                .filter(entry -> entry.price().isPositive())
                .map(entry -> Charge.payable(
                        ItemKind.TRAVEL,
                        PriceBook.NO_ACCESS,
                        null,
                        WORDS,
                        why,
                        BigDecimal.ONE,
                        "C62",
                        entry.price(),
                        BigDecimal.ZERO,
                        Money.zero(currency)));
    }
}
