package changeover.web.api;

import changeover.billing.ledger.TaxReport;
import changeover.billing.ledger.TaxReport.Charged;
import changeover.billing.ledger.TaxReports;
import changeover.contracts.tenants.Today;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The taxes of a period, by tax and place. */
@Path("/api/v1/{slug}/tax-report")
@RolesAllowed({"owner", "office"})
public class TaxReportApi {

    /** @param base before tax */
    public record Part(Amount base, Amount tax) {

        static Part of(Charged charged) {
            return new Part(Amount.of(charged.base()), Amount.of(charged.tax()));
        }
    }

    /**
     * @param percent of the price before any tax
     * @param category of EN 16931
     * @param paid what of it was paid in the period
     * @param writtenOff its part of debts given up in the period, less what was taken back
     */
    public record Line(
            String region,
            String tax,
            String percent,
            String category,
            Part invoiced,
            Part credited,
            Part net,
            Part paid,
            Part writtenOff) {}

    /**
     * @param until the last day, in
     * @param sales all documents before tax, less what was given back
     */
    public record ReportDocument(
            LocalDate from,
            LocalDate until,
            List<Line> taxes,
            Amount invoiced,
            Amount credited,
            Amount net,
            Amount paid,
            Amount sales) {}

    @Inject
    TaxReports reports;

    @Inject
    Today today;

    /** Without days: the last quarter that is over. */
    @GET
    @Transactional
    public ReportDocument report(
            @Nullable @QueryParam("from") String from, @Nullable @QueryParam("until") String until) {
        TaxReport report = reports.of(AskedInQuery.period(from, until, today.day()));
        return new ReportDocument(
                report.period().from(),
                report.period().until(),
                report.rows().stream().map(TaxReportApi::line).toList(),
                Amount.of(report.tax(TaxReport.Row::invoiced)),
                Amount.of(report.tax(TaxReport.Row::credited)),
                Amount.of(report.tax(TaxReport.Row::net)),
                Amount.of(report.tax(TaxReport.Row::paid)),
                Amount.of(report.sales().net()));
    }

    private static Line line(TaxReport.Row row) {
        return new Line(
                row.key().region(),
                row.key().code(),
                row.key().percent().toPlainString(),
                row.key().category(),
                Part.of(row.invoiced()),
                Part.of(row.credited()),
                Part.of(row.net()),
                Part.of(row.paid()),
                Part.of(row.givenUp()));
    }
}
