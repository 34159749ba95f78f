package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;

/** Money came in before its work and is kept for it. */
public record DepositTaken(UUID depositId, UUID customerId, UUID homeId, LocalDate day, Money amount) {}
