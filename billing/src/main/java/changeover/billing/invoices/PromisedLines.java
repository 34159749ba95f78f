package changeover.billing.invoices;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What a customer said yes to for the work of a visit, beside the minutes and parts that the visit itself tells. */
public interface PromisedLines {

    /**
     * What was agreed of a visit's work.
     *
     * @param work of what the visit itself tells
     * @param form how the price of that was agreed
     */
    record Agreed(Work work, ContractForm form, List<Line> lines) {
        public Agreed {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line in somebody's own words, at the price that was accepted.
     *
     * @param item names the line of the estimate, so that it is the same one again
     * @param why names the estimate
     * @param form how the price of its estimate was agreed
     */
    record Line(
            String item,
            Wording words,
            Wording why,
            BigDecimal quantity,
            String unit,
            Money unitPrice,
            Work work,
            ContractForm form) {}

    /**
     * Empty for a visit whose work nobody estimated. Each line is asked for once, by the first of its visits that was closed: of two
     * that are closed at one moment the second waits.
     */
    Optional<Agreed> of(Connection connection, UUID visit) throws SQLException;
}
