package changeover.contracts.agreements;

import java.time.LocalDate;
import java.util.UUID;

/**
 * An agreement was ended before its term was over: what was still to come under it falls away.
 *
 * @param day first day on which it no longer holds
 */
public record AgreementEnded(UUID agreementId, UUID homeId, LocalDate day, String why) {}
