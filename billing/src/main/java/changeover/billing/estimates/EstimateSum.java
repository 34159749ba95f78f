package changeover.billing.estimates;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An estimate added up: its lines before taxes, then each tax once.
 *
 * @param refused why it may not be offered as it stands; null when it may
 */
public record EstimateSum(
        Currency currency,
        List<EstimateLine> lines,
        List<EstimateTax> taxes,
        @Nullable Refusal refused) {

    public EstimateSum {
        lines = List.copyOf(lines);
        taxes = List.copyOf(taxes);
    }

    public Money subtotal() {
        return Money.sum(lines.stream().map(EstimateLine::net).toList(), currency);
    }

    public Money tax() {
        return Money.sum(taxes.stream().map(EstimateTax::amount).toList(), currency);
    }

    public Money total() {
        return subtotal().plus(tax());
    }

    public Optional<Refusal> refusal() {
        return Optional.ofNullable(refused);
    }
}
