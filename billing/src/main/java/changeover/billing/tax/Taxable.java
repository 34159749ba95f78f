package changeover.billing.tax;

import changeover.contracts.money.Money;

/** What of a line decides its taxes, and the amount they are computed on. */
public record Taxable(int position, String region, PropertyUse property, Work work, ContractForm form, Money net) {}
