package changeover.web.office;

import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.Standing;
import changeover.contracts.money.Money;
import changeover.web.office.MoneyPages.Row;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** All documents of the business a page at a time: those that stand somewhere, or whose number or customer is looked for. */
@Path("/{slug}/money/documents")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DocumentPages {

    private static final String ISSUED = "issued";

    private static final Map<String, Standing[]> STANDINGS = Map.of(
            ISSUED,
            new Standing[] {
                Standing.OPEN, Standing.LATE, Standing.PAID, Standing.CREDITED, Standing.GIVEN_UP, Standing.CREDIT
            },
            "open",
            new Standing[] {Standing.OPEN},
            "late",
            new Standing[] {Standing.LATE},
            "paid",
            new Standing[] {Standing.PAID},
            "credited",
            new Standing[] {Standing.CREDITED},
            "given_up",
            new Standing[] {Standing.GIVEN_UP},
            "credit",
            new Standing[] {Standing.CREDIT},
            "ready",
            new Standing[] {Standing.READY},
            "waiting",
            MoneyPages.WAITING,
            "nothing",
            new Standing[] {Standing.NOTHING});

    /**
     * One page of them.
     *
     * @param sum of all pages where each row counts alike, else empty
     * @param narrowed whether there may be others
     */
    public record View(
            List<Row> rows, Leaf leaf, String sum, boolean drafts, boolean narrowed, String stands, String sought) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance documents(Frame frame, View list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    InvoiceLists lists;

    @GET
    @Transactional
    public TemplateInstance documents(@Context UriInfo asked) {
        return documents(asked.getRequestUri().getRawPath(), asked.getQueryParameters());
    }

    /** The page as the query asks for it; a number beyond the last page gives the last. */
    public TemplateInstance documents(String path, MultivaluedMap<String, String> query) {
        var typed = new Typed(query);
        @Nullable String said = typed.line("stands", 20);
        @Nullable String sought = typed.line("q", 100);
        typed.understood();
        String stands = said == null ? ISSUED : said;
        Standing[] standings = STANDINGS.get(stands);
        if (standings == null) {
            throw new NotFoundException();
        }
        Frame frame = frames.of(Tab.MONEY);
        InvoiceFilter all = InvoiceFilter.standing(standings).seeking(sought);
        int skip = Leaf.skip(query, "page");
        InvoiceLists.Listed listed = lists.listed(all.page(skip, Leaf.SIZE), frame.today());
        if (listed.rows().isEmpty() && skip > 0) {
            int count = lists.listed(all.page(0, 1), frame.today()).documents();
            skip = Leaf.of(path, query, "page", count).skip();
            listed = lists.listed(all.page(skip, Leaf.SIZE), frame.today());
        }
        Money sum = listed.amount();
        return Pages.documents(
                frame,
                new View(
                        listed.rows().stream()
                                .map(row -> MoneyPages.row(row, frame))
                                .toList(),
                        Leaf.of(path, query, "page", listed.documents()),
                        sum == null || stands.equals(ISSUED) ? "" : sum.format(frame.locale()),
                        standings[0].isDraft(),
                        sought != null || !stands.equals(ISSUED),
                        stands,
                        sought == null ? "" : sought));
    }
}
