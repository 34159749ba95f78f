package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.util.Map;
import java.util.UUID;

/**
 * What issuing drafts on a day would do.
 *
 * @param totals by draft that would get a number, tax included; below nought for a credit note
 * @param refused by draft that would not, with the reason
 */
public record Foreseen(Map<UUID, Money> totals, Map<UUID, Refusal> refused) {}
