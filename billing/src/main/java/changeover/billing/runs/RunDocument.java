package changeover.billing.runs;

import changeover.contracts.money.Money;
import java.util.UUID;

/** A document that a run issued. */
public record RunDocument(UUID id, String label, UUID customerId, String customer, Money total) {}
