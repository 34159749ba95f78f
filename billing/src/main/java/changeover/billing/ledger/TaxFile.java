package changeover.billing.ledger;

import changeover.billing.ledger.TaxReport.Charged;
import changeover.contracts.words.CsvTable;

/** The tax report as a table for the accountant: one row a tax of a place, amounts with a point. */
public final class TaxFile {

    private TaxFile() {}

    public static byte[] of(TaxReport report) {
        CsvTable table = new CsvTable(
                "from",
                "until",
                "region",
                "tax",
                "percent",
                "category",
                "invoiced_base",
                "invoiced_tax",
                "credited_base",
                "credited_tax",
                "net_base",
                "net_tax",
                "paid_base",
                "paid_tax",
                "currency",
                "given_up_base",
                "given_up_tax");
        for (TaxReport.Row row : report.rows()) {
            Charged invoiced = row.invoiced();
            Charged credited = row.credited();
            table.row(
                    report.period().from(),
                    report.period().until(),
                    row.key().region(),
                    row.key().code(),
                    row.key().percent(),
                    row.key().category(),
                    invoiced.base().amount(),
                    invoiced.tax().amount(),
                    credited.base().amount(),
                    credited.tax().amount(),
                    row.net().base().amount(),
                    row.net().tax().amount(),
                    row.paid().base().amount(),
                    row.paid().tax().amount(),
                    report.currency().getCurrencyCode(),
                    row.givenUp().base().amount(),
                    row.givenUp().tax().amount());
        }
        return table.bytes();
    }
}
