package changeover.billing.fees;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;

/**
 * What the business asks in a place from a day on, and why it may; nought asks nothing from then on.
 *
 * @param region ISO 3166-2 of the home
 * @param amount before tax
 */
public record Fee(UUID id, FeeKind kind, String region, LocalDate from, Money amount, String source) {}
