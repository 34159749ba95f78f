package changeover.billing.estimates;

import changeover.billing.invoices.Rows;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** The lines and taxes of an offered estimate, written once and read as they were offered. */
final class SumRows {

    private SumRows() {}

    static void write(Connection connection, UUID estimate, EstimateSum sum) throws SQLException {
        Rows lines = new Rows(
                "estimate_line",
                "estimate_id uuid, position int, kind text, item_code text, coverage text, words_en text, words_fr text,"
                        + " why_en text, why_fr text, quantity numeric, unit text, unit_price_minor bigint, discount_minor bigint,"
                        + " net_minor bigint, work text");
        for (EstimateLine line : sum.lines()) {
            lines.add(
                    estimate,
                    line.position(),
                    line.kind(),
                    line.item(),
                    line.coverage(),
                    line.words().en(),
                    line.words().fr(),
                    line.why().en(),
                    line.why().fr(),
                    line.quantity().toPlainString(),
                    line.unit(),
                    Objects.requireNonNull(line.unitPrice()).minor(),
                    line.discount().minor(),
                    line.net().minor(),
                    line.work().code());
        }
        Rows taxes = new Rows(
                "estimate_tax",
                "estimate_id uuid, position int, code text, label_en text, label_fr text, percent numeric, registration text,"
                        + " base_minor bigint, amount_minor bigint, lines int[], source text");
        for (EstimateTax tax : sum.taxes()) {
            taxes.add(
                    estimate,
                    tax.position(),
                    tax.code(),
                    tax.label().en(),
                    tax.label().fr(),
                    tax.percent().toPlainString(),
                    tax.registration(),
                    tax.base().minor(),
                    tax.amount().minor(),
                    tax.lines().toString().replace('[', '{').replace(']', '}'),
                    tax.source());
        }
        lines.insert(connection);
        taxes.insert(connection);
    }

    static EstimateSum read(Connection connection, UUID estimate, Currency currency) throws SQLException {
        return new EstimateSum(
                currency, lines(connection, estimate, currency), taxes(connection, estimate, currency), null);
    }

    private static List<EstimateLine> lines(Connection connection, UUID estimate, Currency currency)
            throws SQLException {
        List<EstimateLine> lines = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select position, kind, item_code, coverage, words_en, words_fr, why_en, why_fr, quantity, unit,
                       unit_price_minor, discount_minor, net_minor, work
                  from estimate_line where estimate_id = ? order by position""")) {
            select.setObject(1, estimate);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                lines.add(new EstimateLine(
                        row.getInt(1),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        new Wording(row.getString(5), row.getString(6)),
                        new Wording(row.getString(7), row.getString(8)),
                        row.getBigDecimal(9),
                        row.getString(10),
                        new Money(row.getLong(11), currency),
                        new Money(row.getLong(12), currency),
                        new Money(row.getLong(13), currency),
                        Work.of(row.getString(14))));
            }
        }
        return lines;
    }

    private static List<EstimateTax> taxes(Connection connection, UUID estimate, Currency currency)
            throws SQLException {
        List<EstimateTax> taxes = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select position, code, label_en, label_fr, percent, registration, base_minor, amount_minor, lines, source
                  from estimate_tax where estimate_id = ? order by position""")) {
            select.setObject(1, estimate);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                taxes.add(new EstimateTax(
                        row.getInt(1),
                        row.getString(2),
                        new Wording(row.getString(3), row.getString(4)),
                        row.getBigDecimal(5),
                        row.getString(6),
                        new Money(row.getLong(7), currency),
                        new Money(row.getLong(8), currency),
                        Arrays.asList((Integer[]) row.getArray(9).getArray()),
                        row.getString(10)));
            }
        }
        return taxes;
    }
}
