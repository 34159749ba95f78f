package changeover.contracts.agreements;

import java.time.LocalDate;

/** A customer's yes as it was said. */
public record Yes(String byName, LocalDate day, SaleChannel channel, boolean paidByCard) {}
