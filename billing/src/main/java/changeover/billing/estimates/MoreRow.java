package changeover.billing.estimates;

import changeover.contracts.money.Money;
import java.time.Instant;

/** A later yes: to how much in all, before taxes, for what, by whom. */
public record MoreRow(Money whole, String byName, Instant at, ConsentChannel channel, String words) {}
