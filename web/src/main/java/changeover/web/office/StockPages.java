package changeover.web.office;

import changeover.billing.documents.Words;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.TradeUnit;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Parts: which the business carries, and how many lie where. */
@Path("/{slug}/parts")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class StockPages {

    private static final BigDecimal LEAST = new BigDecimal("0.01");
    private static final BigDecimal MOST = BigDecimal.valueOf(9999);
    private static final Set<String> UNITS =
            Arrays.stream(TradeUnit.values()).map(TradeUnit::code).collect(Collectors.toUnmodifiableSet());

    public record PlaceRow(UUID id, String name) {}

    /** @param held how many in each place, in the places' order */
    public record Row(String code, String name, String size, String unit, List<String> held) {}

    public record Choice(String code, String words) {}

    /** The page in one piece; the two ids are the operations that its forms stand for. */
    public record View(
            List<PlaceRow> places, List<Row> rows, List<Choice> kinds, List<Choice> units, UUID move, UUID count) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance stock(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    People people;

    @Inject
    OwnCatalogue catalogue;

    @GET
    @Transactional
    public TemplateInstance list() {
        Frame frame = frames.of(Tab.PARTS);
        people.technicians(frame.today()).forEach(member -> places.van(member.personId()));
        return page(Said.filled(Map.of("unit", TradeUnit.C62.code())));
    }

    @POST
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    @Nullable String kind = typed.line("kind", 60);
                    var part = new KnownPart(
                            typed.text("code", 40),
                            new Wording(typed.text("nameEn", 120), typed.text("nameFr", 120)),
                            typed.line("unit", 3) == null ? TradeUnit.C62.code() : typed.oneOf("unit", UNITS),
                            kind,
                            typed.line("size", 60));
                    typed.understood();
                    parts.keep(part);
                    return SaidOnce.at("/" + slug + "/parts", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    /** From a supplier onto a place, or from one place to another. */
    @POST
    @Path("movements")
    public Response move(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID operation = typed.id("operation");
                    var amount = List.of(
                            new KnownPart.Amount(typed.text("part", 40), typed.number("quantity", LEAST, MOST)));
                    @Nullable UUID from = typed.idOrNone("fromPlace");
                    UUID to = typed.id("toPlace");
                    typed.understood();
                    var _ = places.find(to).orElseThrow(jakarta.ws.rs.NotFoundException::new);
                    if (from == null) {
                        stock.receive(operation, to, amount, null);
                    } else {
                        var _ = places.find(from).orElseThrow(jakarta.ws.rs.NotFoundException::new);
                        stock.move(operation, from, to, amount, null);
                    }
                    return SaidOnce.at("/" + slug + "/parts", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("counts")
    public Response count(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID operation = typed.id("operation");
                    var counted = List.of(new KnownPart.Amount(
                            typed.text("countPart", 40), typed.number("counted", BigDecimal.ZERO, MOST)));
                    UUID place = typed.id("countPlace");
                    String why = typed.text("why", 300);
                    typed.understood();
                    if (places.find(place).isEmpty()) {
                        throw Refusal.of("typed.choose").at("countPlace").thrown();
                    }
                    stock.count(operation, place, counted, why);
                    return SaidOnce.at("/" + slug + "/parts", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.PARTS);
        List<StockPlace> all = places.all();
        List<Map<String, BigDecimal>> held =
                all.stream().map(place -> stock.onHand(place.id())).toList();
        List<Row> rows = parts.all().stream()
                .map(part -> new Row(
                        part.code(),
                        part.name().in(frame.locale()),
                        part.size() == null ? "" : part.size(),
                        Words.in(frame.locale()).unit(part.unit()),
                        held.stream()
                                .map(place -> figure(place.getOrDefault(part.code(), BigDecimal.ZERO), frame.locale()))
                                .toList()))
                .toList();
        List<Choice> kinds = catalogue.catalogue().parts().stream()
                .map(kind -> new Choice(kind.code(), kind.wording().in(frame.locale())))
                .toList();
        List<PlaceRow> names = all.stream()
                .map(place -> new PlaceRow(place.id(), place.name()))
                .toList();
        List<Choice> units = Arrays.stream(TradeUnit.values())
                .map(unit -> new Choice(unit.code(), unit.wording().in(frame.locale())))
                .toList();
        return Pages.stock(frame, new View(names, rows, kinds, units, UUID.randomUUID(), UUID.randomUUID()), form);
    }

    private static String figure(BigDecimal quantity, Locale locale) {
        return quantity.signum() == 0 ? "" : Written.of(quantity, locale);
    }
}
