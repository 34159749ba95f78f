package changeover.web.office;

import changeover.billing.ledger.Period;
import changeover.billing.ledger.TaxReport;
import changeover.billing.ledger.TaxReport.Charged;
import changeover.billing.ledger.TaxReport.Key;
import changeover.billing.ledger.TaxReport.What;
import changeover.billing.ledger.TaxReports;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
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
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The documents behind a figure of the tax report: of one tax, of all taxes, or all sales. */
@Path("/{slug}/money/tax-report")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TaxDocumentPages {

    private static final Map<String, Set<What>> LISTS = Map.of(
            "invoiced", Set.of(What.INVOICED),
            "credited", Set.of(What.CREDITED),
            "net", Set.of(What.INVOICED, What.CREDITED),
            "paid", Set.of(What.PAID),
            "givenup", Set.of(What.GIVEN_UP));

    private static final Set<String> SALES = Set.of("invoiced", "credited", "net");

    public record Row(
            UUID id,
            String label,
            String day,
            UUID customerId,
            String customer,
            boolean credit,
            String base,
            String tax) {}

    /**
     * The documents behind a figure.
     *
     * @param title of one tax, or empty
     * @param sales whether all sales are listed, and no tax
     */
    public record Behind(
            String title,
            boolean sales,
            String what,
            String period,
            List<Row> rows,
            Leaf leaf,
            String base,
            String tax,
            String back) {

        /** Two taxes may lie on the same amount, so under all taxes what they lie on has no sum. */
        public boolean based() {
            return sales || !title.isEmpty();
        }
    }

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance taxdocuments(Frame frame, Behind behind);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    TaxReports reports;

    @Inject
    Businesses businesses;

    /** Without a tax those of all taxes. */
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
        if (whats == null) {
            throw new NotFoundException();
        }
        Frame frame = frames.of(Tab.MONEY);
        if (region == null && code == null && percent == null && category == null) {
            return page(asked, period, what, "", false, reports.documents(period, null, whats), frame);
        }
        if (region == null || code == null || percent == null || category == null) {
            throw new NotFoundException();
        }
        Key key = new Key(region, code, number(percent), category);
        TaxReport.Row row = reports.of(period).rows().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        String title = row.label().in(frame.locale()) + ", " + TaxReportRows.place(key, frame.locale());
        return page(asked, period, what, title, false, reports.documents(period, key, whats), frame);
    }

    /** What was sold and given back before tax, taxed or not. */
    @GET
    @Path("sales")
    @Transactional
    public TemplateInstance sales(@Context UriInfo asked, @Nullable @QueryParam("what") String what) {
        Period period = PeriodAsked.understood(asked, today.day()).period();
        String said = what == null ? "net" : what;
        Set<What> whats = LISTS.get(said);
        if (whats == null || !SALES.contains(said)) {
            throw new NotFoundException();
        }
        return page(asked, period, said, "", true, reports.sold(period, whats), frames.of(Tab.MONEY));
    }

    private TemplateInstance page(
            UriInfo asked,
            Period period,
            @Nullable String what,
            String title,
            boolean sales,
            List<TaxReports.Document> documents,
            Frame frame) {
        Charged sum = documents.stream()
                .map(TaxReports.Document::part)
                .reduce(Charged.nothing(businesses.current().currency()), Charged::plus);
        Leaf leaf = Leaf.of(asked, documents.size());
        return Pages.taxdocuments(
                frame,
                new Behind(
                        title,
                        sales,
                        what == null ? "" : what,
                        PeriodAsked.inWords(period, frame),
                        leaf.shown(documents).stream()
                                .map(one -> TaxReportRows.row(one, frame))
                                .toList(),
                        leaf,
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
}
