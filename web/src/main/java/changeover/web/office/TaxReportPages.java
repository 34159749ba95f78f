package changeover.web.office;

import changeover.billing.ledger.Period;
import changeover.billing.ledger.TaxFile;
import changeover.billing.ledger.TaxReport;
import changeover.billing.ledger.TaxReports;
import changeover.contracts.tenants.Today;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;

/** The taxes of a period; each figure opens the documents it is the sum of. */
@Path("/{slug}/money/tax-report")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TaxReportPages {

    /** A tax of a place in words; {@code list} is the address of its documents, without what is asked of them. */
    public record Line(
            String place,
            String label,
            String base,
            String invoiced,
            String credited,
            String net,
            String paid,
            String givenUp,
            String list) {}

    public record Sums(String invoiced, String credited, String net, String paid, String givenUp) {}

    public record Sales(String invoiced, String credited, String net) {}

    /** @param query the period as it stands in an address */
    public record View(String period, String query, List<Line> lines, Sums sums, Sales sales, String file) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance taxreport(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    TaxReports reports;

    @GET
    @Transactional
    public Response report(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        PeriodAsked period = PeriodAsked.of(typed, today.day());
        if (!period.refusals().isEmpty()) {
            return desk.refuse(
                    period.refusals(), refusals -> page(period, Said.again(typed, refusals, frames.locale())));
        }
        return Response.ok(page(period, Said.filled(period.fields()))).build();
    }

    @GET
    @Path("taxes.csv")
    @Produces("text/csv")
    @Transactional
    public Response file(@Context UriInfo asked) {
        Period period = PeriodAsked.understood(asked, today.day()).period();
        return CsvAnswer.of(TaxFile.of(reports.of(period)), "taxes", period);
    }

    private TemplateInstance page(PeriodAsked asked, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        TaxReport report = reports.of(asked.period());
        List<Line> lines = report.rows().stream()
                .map(row -> TaxReportRows.line(row, asked.query(), frame))
                .toList();
        return Pages.taxreport(
                frame,
                new View(
                        PeriodAsked.inWords(asked.period(), frame),
                        asked.query(),
                        lines,
                        new Sums(
                                TaxReportRows.said(report.tax(TaxReport.Row::invoiced), frame),
                                TaxReportRows.said(report.tax(TaxReport.Row::credited), frame),
                                TaxReportRows.said(report.tax(TaxReport.Row::net), frame),
                                TaxReportRows.said(report.tax(TaxReport.Row::paid), frame),
                                TaxReportRows.said(report.tax(TaxReport.Row::givenUp), frame)),
                        new Sales(
                                TaxReportRows.said(report.sales().invoiced(), frame),
                                TaxReportRows.said(report.sales().credited(), frame),
                                TaxReportRows.said(report.sales().net(), frame)),
                        frame.at("money/tax-report/taxes.csv?") + asked.query()),
                form);
    }
}
