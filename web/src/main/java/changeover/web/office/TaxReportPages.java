package changeover.web.office;

import changeover.billing.ledger.Period;
import changeover.billing.ledger.TaxFile;
import changeover.billing.ledger.TaxReport;
import changeover.billing.ledger.TaxReport.Charged;
import changeover.billing.ledger.TaxReport.Key;
import changeover.billing.ledger.TaxReport.What;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The taxes of a period; each figure opens the documents it is the sum of. */
@Path("/{slug}/money/tax-report")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TaxReportPages {

    static final int SHOWN = 500;

    private static final Map<String, Set<What>> LISTS = Map.of(
            "invoiced", Set.of(What.INVOICED),
            "credited", Set.of(What.CREDITED),
            "net", Set.of(What.INVOICED, What.CREDITED),
            "paid", Set.of(What.PAID),
            "givenup", Set.of(What.GIVEN_UP));

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

    public record View(String period, List<Line> lines, Sums sums, Sales sales, String file) {}

    public record Row(
            UUID id,
            String label,
            String day,
            UUID customerId,
            String customer,
            boolean credit,
            String base,
            String tax) {}

    /** The documents behind a figure. */
    public record Behind(
            String title,
            String what,
            String period,
            List<Row> rows,
            int count,
            String base,
            String tax,
            String back) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance taxreport(Frame frame, View view, Said form);

        static native TemplateInstance taxdocuments(Frame frame, Behind behind);

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

    @GET
    @Path("documents")
    @Transactional
    public TemplateInstance documents(
            @Context UriInfo asked,
            @Nullable @QueryParam("what") String what,
            @Nullable @QueryParam("region") String region,
            @Nullable @QueryParam("tax") String code,
            @Nullable @QueryParam("percent") String percent,
            @Nullable @QueryParam("category") String category) {
        Period period = PeriodAsked.understood(asked, today.day()).period();
        Set<What> whats = LISTS.get(what == null ? "" : what);
        if (whats == null || region == null || code == null || percent == null || category == null) {
            throw new NotFoundException();
        }
        Key key = new Key(region, code, number(percent), category);
        TaxReport.Row row = reports.of(period).rows().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        Frame frame = frames.of(Tab.MONEY);
        List<TaxReports.Document> documents = reports.documents(period, key, whats);
        Charged sum = documents.stream()
                .map(TaxReports.Document::part)
                .reduce(row.invoiced().minus(row.invoiced()), Charged::plus);
        return Pages.taxdocuments(
                frame,
                new Behind(
                        row.label().in(frame.locale()) + ", " + TaxReportRows.place(key, frame.locale()),
                        what == null ? "" : what,
                        PeriodAsked.inWords(period, frame),
                        documents.stream()
                                .limit(SHOWN)
                                .map(one -> TaxReportRows.row(one, frame))
                                .toList(),
                        documents.size(),
                        TaxReportRows.said(sum.base(), frame),
                        TaxReportRows.said(sum.tax(), frame),
                        "from=" + period.from() + "&until=" + period.until()));
    }

    private static BigDecimal number(String percent) {
        if (!percent.matches("\\d{1,3}(\\.\\d{1,4})?")) {
            throw new NotFoundException();
        }
        return new BigDecimal(percent).stripTrailingZeros();
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
