package changeover.web.office;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The price book: labour, trips and parts, each price from its day on. */
@Path("/{slug}/shop/prices")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PricePages {

    public record Row(String from, String what, String price, String cost) {}

    /** @param value item kind and code, {@code part:FIL-1} */
    public record Choice(String value, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance prices(Frame frame, List<Row> rows, List<Choice> choices, Said form);

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
    Parts parts;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.filled(Map.of("from", today.day().toString())));
    }

    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var currency = businesses.current().currency();
                    List<String> known = choices(frames.of(Tab.SHOP)).stream()
                            .map(Choice::value)
                            .toList();
                    String[] item =
                            typed.oneOf("item", java.util.Set.copyOf(known)).split(":", 2);
                    var price = typed.money("price", currency);
                    var cost = typed.line("cost", 20) == null ? null : typed.money("cost", currency);
                    var from = typed.day("from");
                    typed.understood();
                    prices.set(new PriceEntry(ItemKind.of(item[0]), item[1], price, cost, from));
                    return SaidOnce.at("/" + slug + "/shop/prices", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Map<String, String> names = choices(frame).stream().collect(Collectors.toMap(Choice::value, Choice::words));
        List<Row> rows = prices.book().entries().stream()
                .sorted(Comparator.comparing(PriceEntry::kind)
                        .thenComparing(PriceEntry::code)
                        .thenComparing(PriceEntry::from, Comparator.reverseOrder()))
                .map(entry -> new Row(
                        frame.brief(entry.from()),
                        names.getOrDefault(entry.kind().code() + ":" + entry.code(), entry.code()),
                        entry.price().format(frame.locale()),
                        entry.cost() == null ? "" : entry.cost().format(frame.locale())))
                .toList();
        return Pages.prices(frame, rows, choices(frame), form);
    }

    private List<Choice> choices(Frame frame) {
        boolean french = frame.locale().getLanguage().equals("fr");
        var choices = new java.util.ArrayList<Choice>();
        choices.add(new Choice("labour:" + PriceBook.HOUR, french ? "Une heure de travail" : "An hour of labour"));
        choices.add(new Choice(
                "labour:" + PriceBook.AFTER_HOURS,
                french
                        ? "Une heure de travail hors des heures ouvrables, sur appel"
                        : "An hour of labour on a call outside working hours"));
        choices.add(new Choice("travel:" + PriceBook.VISIT, french ? "Un déplacement" : "A trip"));
        Function<KnownPart, Choice> part =
                one -> new Choice("part:" + one.code(), one.name().in(frame.locale()) + " (" + one.code() + ")");
        parts.all().stream().map(part).forEach(choices::add);
        return choices;
    }
}
