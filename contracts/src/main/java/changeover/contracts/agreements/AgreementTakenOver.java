package changeover.contracts.agreements;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Somebody else has an agreement from a day on: what is still to be asked is asked of them.
 *
 * @param language of the new payer, en or fr
 */
public record AgreementTakenOver(
        UUID agreementId, UUID homeId, LocalDate day, UUID wasPayerId, UUID payerId, String language) {}
