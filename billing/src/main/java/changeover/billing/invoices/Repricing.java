package changeover.billing.invoices;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.Prices;
import changeover.contracts.money.Money;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Lines that had no price take it from the price book once it is there; lines that have one keep it, whoever wrote it. A
 * person's own words and quantity stay.
 */
@ApplicationScoped
public class Repricing {

    @Inject
    AgroalDataSource datasource;

    @Inject
    InvoiceRows rows;

    @Inject
    Prices prices;

    /** @return how many lines of the draft now have a price */
    public int take(UUID draft) {
        PriceBook book = prices.book();
        int priced = 0;
        try (Connection connection = datasource.getConnection()) {
            for (LineRow line : rows.lines(connection, List.of(draft))) {
                Optional<Money> price = line.waitsForPrice() && line.itemCode() != null
                        ? book.on(ItemKind.of(line.kind()), line.itemCode(), line.day())
                                .map(entry -> entry.price())
                        : Optional.empty();
                if (price.isPresent()) {
                    write(connection, line, price.get());
                    priced++;
                }
            }
            if (priced > 0) {
                DraftHead.follow(connection, draft);
            }
            return priced;
        } catch (SQLException cause) {
            throw new IllegalStateException("the prices could not be taken", cause);
        }
    }

    private static void write(Connection connection, LineRow line, Money price) throws SQLException {
        Money gross = price.times(line.quantity());
        Money discount = gross.percent(line.discountPercent());
        try (PreparedStatement update = connection.prepareStatement("""
                update invoice_line set unit_price_minor = ?, discount_minor = ?, net_minor = ?,
                       reckoned_minor = round(? * reckoned_quantity)
                         - round(round(? * reckoned_quantity) * discount_percent / 100)
                 where invoice_id = ? and position = ?""")) {
            update.setLong(1, price.minor());
            update.setLong(2, discount.minor());
            update.setLong(3, gross.minus(discount).minor());
            update.setLong(4, price.minor());
            update.setLong(5, price.minor());
            update.setObject(6, line.invoiceId());
            update.setInt(7, line.position());
            update.executeUpdate();
        }
    }
}
