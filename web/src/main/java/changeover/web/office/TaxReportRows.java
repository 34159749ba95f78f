package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.ledger.TaxReport;
import changeover.billing.ledger.TaxReport.Key;
import changeover.billing.ledger.TaxReports;
import changeover.contracts.money.Money;
import changeover.web.session.Frame;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The tax report's lines and the documents behind them, in words. */
final class TaxReportRows {

    private TaxReportRows() {}

    static TaxReportPages.Line line(TaxReport.Row row, String query, Frame frame) {
        Key key = row.key();
        return new TaxReportPages.Line(
                place(key, frame.locale()),
                row.label().in(frame.locale()),
                said(row.net().base(), frame),
                said(row.invoiced().tax(), frame),
                said(row.credited().tax(), frame),
                said(row.net().tax(), frame),
                said(row.paid().tax(), frame),
                said(row.givenUp().tax(), frame),
                frame.at("money/tax-report/documents?") + query + "&region=" + inAddress(key.region()) + "&tax="
                        + inAddress(key.code()) + "&percent=" + key.percent().toPlainString() + "&category="
                        + inAddress(key.category()) + "&what=");
    }

    static TaxDocumentPages.Row row(TaxReports.Document one, Frame frame) {
        return new TaxDocumentPages.Row(
                one.id(),
                one.label(),
                frame.brief(one.day()),
                one.customerId(),
                one.customer(),
                one.credit(),
                said(one.part().base(), frame),
                said(one.part().tax(), frame));
    }

    static String place(Key key, Locale locale) {
        return Places.region(Words.in(locale), key.region());
    }

    static String said(Money money, Frame frame) {
        return money.format(frame.locale());
    }

    private static String inAddress(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
