package changeover.web.office;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.NextPrices;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.Prices;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A whole version of the book prepared ahead: the prices of the day before, so much more, looked at first. */
@Path("/{slug}/shop/prices/next")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class NextPricesPages {

    private static final BigDecimal LEAST = BigDecimal.valueOf(-90);
    private static final BigDecimal MOST = BigDecimal.valueOf(200);

    /** @param replaced what that day had already, empty where it had nothing */
    public record Row(String what, String before, String after, String difference, String replaced) {}

    /**
     * @param seen alike for the same prices only
     * @param byCost how many prices follow their cost, and stay with it
     */
    public record View(String day, List<Row> rows, String seen, int byCost) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance nextprices(Frame frame, @Nullable View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Prices prices;

    @Inject
    PriceNames names;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance page(@Context UriInfo address) {
        Frame frame = frames.of(Tab.SHOP);
        MultivaluedMap<String, String> asked = address.getQueryParameters();
        if (!asked.containsKey("from")) {
            LocalDate next = today.day().plusYears(1).withDayOfYear(1);
            return Pages.nextprices(
                    frame,
                    null,
                    Said.filled(Map.of(
                            "from",
                            next.toString(),
                            "part",
                            "3",
                            "labour",
                            "3",
                            "travel",
                            "3",
                            "step",
                            Written.of(new Money(5, businesses.current().currency()), frame.locale()))));
        }
        var typed = new Typed(asked);
        NextPrices version = version(typed);
        List<Refusal> refusals = typed.refusals();
        return Pages.nextprices(
                frame, refusals.isEmpty() ? view(version, frame) : null, Said.again(typed, refusals, frame.locale()));
    }

    @POST
    public Response write(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    NextPrices version = version(typed);
                    typed.understood();
                    PriceBook book = prices.book();
                    if (!seen(version, book).equals(typed.line("seen", 40))) {
                        throw Refusal.of("price.changed-since").thrown();
                    }
                    prices.writeAll(version.rows(book));
                    return SaidOnce.at("/" + slug + "/shop/prices?day=" + version.day(), "kept");
                },
                refusals -> {
                    Frame frame = frames.of(Tab.SHOP);
                    var again = new Typed(fields);
                    NextPrices version = version(again);
                    return Pages.nextprices(
                            frame,
                            again.refusals().isEmpty() ? view(version, frame) : null,
                            Said.again(typed, refusals, frame.locale()));
                });
    }

    private NextPrices version(Typed typed) {
        Map<ItemKind, BigDecimal> percent = new EnumMap<>(ItemKind.class);
        for (ItemKind kind : ItemKind.values()) {
            percent.put(kind, typed.number(kind.code(), LEAST, MOST));
        }
        Money step = MarkUpPages.step(typed, businesses.current().currency());
        LocalDate from = typed.day("from");
        if (!from.isAfter(today.day()) && typed.refusals().isEmpty()) {
            typed.refuse(Refusal.of("price.version-ahead").at("from"));
        }
        return new NextPrices(from, percent, step);
    }

    private static String seen(NextPrices version, PriceBook book) {
        return Integer.toHexString(version.rows(book).toString().hashCode());
    }

    private View view(NextPrices version, Frame frame) {
        PriceBook book = prices.book();
        Map<String, String> called = names.names(frame.locale());
        List<Row> rows = version.of(book).stream()
                .map(change -> new Row(
                        called.getOrDefault(PriceNames.key(change.kind(), change.code()), change.code()),
                        change.before().format(frame.locale()),
                        change.after().format(frame.locale()),
                        (change.difference().isPositive() ? "+" : "")
                                + change.difference().format(frame.locale()),
                        change.replaced() == null ? "" : change.replaced().format(frame.locale())))
                .toList();
        int byCost = (int) book.asOf(version.day()).stream()
                .filter(entry -> entry.by() != null)
                .count();
        return new View(frame.inWords(version.day()), rows, seen(version, book), byCost);
    }
}
