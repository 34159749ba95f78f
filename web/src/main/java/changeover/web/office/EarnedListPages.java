package changeover.web.office;

import changeover.billing.costs.StockValue;
import changeover.billing.ledger.Earned;
import changeover.billing.ledger.EarnedDocuments;
import changeover.billing.ledger.EarnedDocuments.What;
import changeover.billing.ledger.EarnedOn;
import changeover.billing.ledger.EarnedOn.Days;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a figure of money on a day is the sum of: agreements and documents that earned, parts in stock. */
@Path("/{slug}/money/earned")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class EarnedListPages {

    private static final Set<String> OF = Set.of("plans", "visits", "fees", "all");

    /** An agreement or a document that earned. */
    public record Row(
            boolean agreement, UUID id, String words, String day, UUID customerId, String customer, String amount) {}

    public record Behind(String of, String days, String day, String asked, List<Row> rows, Leaf leaf, String sum) {}

    public record Part(String code, String name, String quantity, String cost, String value) {}

    public record Stock(String day, String asked, List<Part> rows, int without, String sum) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance earnedbehind(Frame frame, Behind list);

        static native TemplateInstance stockvalue(Frame frame, Stock list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Earned earned;

    @Inject
    EarnedDocuments documents;

    @Inject
    StockValue stock;

    /** What was earned in the month, in the year or ever: by plans or one agreement, by visits, by fees, or by all. */
    @GET
    @Path("behind")
    @Transactional
    public TemplateInstance behind(
            @Context UriInfo asked, @Nullable @QueryParam("of") String of, @Nullable @QueryParam("in") String in) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable UUID agreement = typed.idOrNone("agreement");
        typed.understood();
        LocalDate day = day(asked);
        if (of == null || !OF.contains(of)) {
            throw new NotFoundException();
        }
        Days days = Days.of(in == null ? "ever" : in).orElseThrow(NotFoundException::new);
        Frame frame = frames.of(Tab.MONEY);
        List<Row> rows = new ArrayList<>();
        EarnedOn on = earned.on(day);
        Money sum = Money.zero(on.currency());
        if (of.equals("plans") || of.equals("all")) {
            for (EarnedOn.Plan plan : on.where(one ->
                    !one.earned().in(days).isZero() && (agreement == null || agreement.equals(one.agreementId())))) {
                Money amount = plan.earned().in(days);
                sum = sum.plus(amount);
                rows.add(new Row(
                        true,
                        plan.agreementId(),
                        plan.plan().in(frame.locale()) + ", " + plan.number(),
                        "",
                        plan.customerId(),
                        plan.customer(),
                        said(amount, frame)));
            }
        }
        for (What what : What.values()) {
            boolean wanted = of.equals("all") || of.equals(what.name().toLowerCase(Locale.ROOT));
            for (EarnedDocuments.Document one :
                    wanted ? documents.between(days.from(day), day, what) : List.<EarnedDocuments.Document>of()) {
                sum = sum.plus(one.net());
                rows.add(new Row(
                        false,
                        one.id(),
                        one.label(),
                        frame.brief(one.day()),
                        one.customerId(),
                        one.customer(),
                        said(one.net(), frame)));
            }
        }
        Leaf leaf = Leaf.of(asked, rows.size());
        return Pages.earnedbehind(
                frame,
                new Behind(
                        of, days.code(), frame.inWords(day), day.toString(), leaf.shown(rows), leaf, said(sum, frame)));
    }

    @GET
    @Path("stock")
    @Transactional
    public TemplateInstance stock(@Context UriInfo asked) {
        LocalDate day = day(asked);
        Frame frame = frames.of(Tab.MONEY);
        StockValue.On on = stock.on(day);
        return Pages.stockvalue(
                frame,
                new Stock(
                        frame.inWords(day),
                        day.toString(),
                        on.lines().stream()
                                .map(line -> new Part(
                                        line.code(),
                                        line.name().in(frame.locale()),
                                        PlanForm.plain(line.quantity(), frame.locale()),
                                        line.cost() == null ? "" : said(line.cost(), frame),
                                        line.cost() == null ? "" : said(line.value(), frame)))
                                .toList(),
                        on.withoutCost().size(),
                        said(on.value(), frame)));
    }

    private LocalDate day(UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate day = typed.dayOrNone("day");
        typed.understood();
        return day == null ? today.day() : day;
    }

    private static String said(Money money, Frame frame) {
        return money.format(frame.locale());
    }
}
