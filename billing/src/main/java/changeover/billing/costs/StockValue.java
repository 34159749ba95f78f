package changeover.billing.costs;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the parts on the shelf and in the vans cost at the end of a day: every movement up to it, at the price book's cost of that
 * day. A part without a cost is named and counts as nought only because nobody knows more.
 */
@ApplicationScoped
public class StockValue {

    private static final String HELD = """
            select m.part_code, coalesce(p.name_en, m.part_code), coalesce(p.name_fr, m.part_code), coalesce(p.unit, 'C62'),
                   sum(m.quantity)
              from stock_movement m
              left join part p on p.tenant_id = m.tenant_id and p.code = m.part_code
             where m.day <= ?
             group by m.part_code, p.name_en, p.name_fr, p.unit
            having sum(m.quantity) <> 0 order by 2, 1""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    CostBooks books;

    /**
     * One part, wherever it lies.
     *
     * @param unit UN/ECE Recommendation 20
     * @param quantity below nought where somebody named a reason for it
     * @param cost of one; null where nobody wrote it down
     */
    public record Line(
            String code,
            Wording name,
            String unit,
            BigDecimal quantity,
            @Nullable Money cost,
            Money value) {}

    public record On(LocalDate day, List<Line> lines, Currency currency) {

        public Money value() {
            return Money.sum(lines.stream().map(Line::value).toList(), currency);
        }

        /** Parts of which nobody wrote down what one costs. */
        public List<Line> withoutCost() {
            return lines.stream().filter(line -> line.cost() == null).toList();
        }
    }

    public On on(LocalDate day) {
        CostBook book = books.read();
        Money nought = Money.zero(book.currency());
        List<Line> lines = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(HELD)) {
            select.setObject(1, day);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                BigDecimal quantity = row.getBigDecimal(5);
                @Nullable Money cost = book.part(row.getString(1), day).orElse(null);
                lines.add(new Line(
                        row.getString(1),
                        new Wording(row.getString(2), row.getString(3)),
                        row.getString(4),
                        quantity,
                        cost,
                        cost == null ? nought : cost.times(quantity)));
            }
            return new On(day, List.copyOf(lines), book.currency());
        } catch (SQLException cause) {
            throw new IllegalStateException("the stock could not be read", cause);
        }
    }
}
