package changeover.web.office;

import changeover.billing.fees.FeeCaution;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.PriceRow;
import changeover.billing.pricing.Prices;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.web.office.PriceNames.Choice;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The price book as it stands on any day, what changes after it, and a price from a day on. */
@Path("/{slug}/shop/prices")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PricePages {

    /**
     * @param how where the price comes from
     * @param next the next price and its day, empty where none is written
     */
    public record Row(String what, String price, String from, String cost, String how, String next) {}

    /** @param ahead it has not begun, so it may still be taken back */
    public record Coming(LocalDate day, String words, int count, boolean ahead) {}

    /** @param missing parts that are carried and have no price on the day */
    public record View(
            String day,
            String today,
            List<Row> rows,
            List<Coming> coming,
            List<String> missing,
            String counting,
            List<FeeCautions.Caution> cautions) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance prices(Frame frame, View view, List<Choice> choices, Said asked, Said form);

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
    MarkUpsInWords markUps;

    @Inject
    FeeCautions cautions;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("day") @Nullable String day) {
        return page(day, Said.filled(Map.of("from", today.day().toString())));
    }

    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate from = typed.day("from");
                    prices.write(row(typed, from));
                    return SaidOnce.at("/" + slug + "/shop/prices?day=" + later(from, today.day()), "kept");
                },
                refusals -> page(null, Said.again(typed, refusals, frames.locale())));
    }

    /** A day's prices that have not begun are taken back; those before it hold on. */
    @POST
    @Path("withdrawal")
    @RolesAllowed("owner")
    public Response takeBack(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate day = typed.day("day");
                    typed.understood();
                    prices.takeBack(day, today.day());
                    return SaidOnce.at("/" + slug + "/shop/prices", "kept");
                },
                refusals -> page(null, Said.again(typed, refusals, frames.locale())));
    }

    private PriceRow row(Typed typed, LocalDate from) {
        var currency = businesses.current().currency();
        Set<String> known =
                names.choices(from, frames.locale()).stream().map(Choice::value).collect(Collectors.toSet());
        String[] item = typed.oneOf("item", known).split(":", 2);
        ItemKind kind = ItemKind.of(item[0]);
        Money cost = typed.line("cost", 20) == null ? null : typed.money("cost", currency);
        boolean byMarkUp = kind == ItemKind.PART && cost != null && typed.line("price", 20) == null;
        Money price = byMarkUp ? null : typed.money("price", currency);
        typed.understood();
        return new PriceRow(kind, item[1], null, price, cost, from);
    }

    private TemplateInstance page(@Nullable String asked, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        var query = new MultivaluedHashMap<String, String>();
        query.putSingle("day", asked == null || asked.isBlank() ? today.day().toString() : asked);
        var typed = new Typed(query);
        LocalDate day = typed.day("day");
        List<Refusal> refusals = typed.refusals();
        LocalDate shown = refusals.isEmpty() ? day : today.day();
        Said said = Said.again(typed, refusals, frame.locale());
        return Pages.prices(frame, view(frame, shown), names.choices(shown, frame.locale()), said, form);
    }

    private View view(Frame frame, LocalDate day) {
        PriceBook book = prices.book();
        Map<String, String> called = names.names(frame.locale());
        List<PriceEntry> held = book.asOf(day);
        Map<PriceRow.Item, PriceEntry> next = book.nextAfter(day);
        Set<String> priced = held.stream()
                .map(entry -> PriceNames.key(entry.kind(), entry.code()))
                .collect(Collectors.toSet());
        List<String> missing = names.choices(day, frame.locale()).stream()
                .filter(choice -> choice.value().startsWith(ItemKind.PART.code()) && !priced.contains(choice.value()))
                .map(Choice::words)
                .toList();
        return new View(
                frame.inWords(day),
                day.equals(today.day()) ? "" : today.day().toString(),
                held.stream()
                        .map(entry -> row(frame, next.get(entry.item()), called, entry))
                        .toList(),
                book.changesAfter(day).stream()
                        .map(one -> coming(frame, book, one))
                        .toList(),
                missing,
                LabourPages.counting(book.termsOn(day), frame.locale()),
                cautions.of(List.of(FeeCaution.NO_ACCESS), frame));
    }

    private Row row(Frame frame, @Nullable PriceEntry next, Map<String, String> called, PriceEntry entry) {
        return new Row(
                called.getOrDefault(PriceNames.key(entry.kind(), entry.code()), entry.code()),
                entry.price().format(frame.locale()),
                frame.brief(entry.from()),
                entry.cost() == null ? "" : entry.cost().format(frame.locale()),
                entry.by() == null ? "" : markUps.of(entry.by(), frame.locale()),
                next == null ? "" : next.price().format(frame.locale()) + ", " + frame.brief(next.from()));
    }

    private Coming coming(Frame frame, PriceBook book, LocalDate day) {
        int count = (int)
                book.entries().stream().filter(one -> one.from().equals(day)).count();
        return new Coming(day, frame.inWords(day), count, day.isAfter(today.day()));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
