package changeover.contracts.agreements;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Customers have said yes: the year's visits and the plan's invoices are written in the same transaction. */
public record AgreementSold(List<Sold> sold) {

    public AgreementSold {
        sold = List.copyOf(sold);
    }

    /**
     * One agreement that was sold.
     *
     * @param termUntil first day after the term
     * @param price of the term, before tax
     * @param language of the customer's papers, {@code en} or {@code fr}
     */
    public record Sold(
            UUID agreementId,
            UUID homeId,
            UUID payerId,
            LocalDate termFrom,
            LocalDate termUntil,
            Money price,
            int instalments,
            LocalDate saleDay,
            SaleChannel channel,
            boolean paidByCard,
            String language) {}
}
