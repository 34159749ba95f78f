package changeover.contracts.agreements;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Agreements that ran before the business came here are in the register: what is left of their years is to be planned,
 * and what is still to be asked is to be drafted.
 *
 * @param day of the take-over
 */
public record AgreementsTakenOver(LocalDate day, List<TakenOver> agreements) {

    public AgreementsTakenOver {
        agreements = List.copyOf(agreements);
    }

    /**
     * One agreement as it stood.
     *
     * @param asked what is still to be invoiced of its price, before tax
     * @param visitsDone in the term so far; null when nobody knows
     * @param lastVisit null when nobody knows
     */
    public record TakenOver(
            UUID agreementId,
            UUID homeId,
            UUID payerId,
            LocalDate termFrom,
            LocalDate termUntil,
            Money asked,
            @Nullable Integer visitsDone,
            @Nullable LocalDate lastVisit,
            String language) {}
}
