package changeover.billing.fees;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What the business asks in a place from a day on, and why it may; nought asks nothing from then on.
 *
 * @param region ISO 3166-2 of the home
 * @param amount before tax
 */
public record Fee(UUID id, FeeKind kind, String region, LocalDate from, Money amount, String source) {

    /** What is asked in the place on the day: the newest of its rows, unless that asks nothing. */
    static Optional<Fee> on(List<Fee> fees, FeeKind kind, String region, LocalDate day) {
        return fees.stream()
                .filter(fee -> fee.kind() == kind
                        && fee.region().equals(region)
                        && !fee.from().isAfter(day))
                .max(Comparator.comparing(Fee::from))
                .filter(fee -> fee.amount().isPositive());
    }
}
