package changeover.web.office;

import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.stock.Supplies;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;

/** Whom each part is bought from, and how many should always lie on the shelf and in each van. */
@Path("/{slug}/parts/supply")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SupplyPages {

    private static final BigDecimal MOST = BigDecimal.valueOf(9999);

    public record Choice(String code, String name) {}

    /** @param least by place, those with a minimum */
    public record Row(String name, String supplier, List<String> least) {}

    public record View(List<Row> rows, List<Choice> parts, List<Choice> places) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance supply(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Parts parts;

    @Inject
    StockPlaces places;

    @Inject
    Supplies supplies;

    @GET
    @Transactional
    public TemplateInstance read() {
        return page(Said.blank());
    }

    @POST
    @Path("suppliers")
    public Response boughtFrom(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String part = typed.text("part", 60);
                    String supplier = Objects.requireNonNullElse(typed.line("supplier", 120), "");
                    typed.understood();
                    supplies.boughtFrom(part, supplier);
                    return SaidOnce.at("/" + slug + "/parts/supply", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("minimums")
    public Response shouldHold(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String part = typed.text("part", 60);
                    UUID place = typed.id("place");
                    BigDecimal quantity = typed.number("quantity", BigDecimal.ZERO, MOST);
                    typed.understood();
                    var _ = places.find(place).orElseThrow(NotFoundException::new);
                    supplies.shouldHold(part, place, quantity);
                    return SaidOnce.at("/" + slug + "/parts/supply", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.PARTS);
        List<StockPlace> all = places.all();
        Map<String, String> suppliers = supplies.suppliers();
        Map<UUID, Map<String, BigDecimal>> least = supplies.minimums();
        List<KnownPart> known = parts.all();
        List<Row> rows = known.stream()
                .map(part -> new Row(
                        part.name().in(frame.locale()),
                        suppliers.getOrDefault(part.code(), ""),
                        all.stream()
                                .flatMap(place -> least(place, least, part.code(), frame.locale()))
                                .toList()))
                .toList();
        return Pages.supply(
                frame,
                new View(
                        rows,
                        known.stream()
                                .map(part -> new Choice(part.code(), part.name().in(frame.locale())))
                                .toList(),
                        all.stream()
                                .map(place -> new Choice(place.id().toString(), place.name()))
                                .toList()),
                form);
    }

    private static Stream<String> least(
            StockPlace place, Map<UUID, Map<String, BigDecimal>> least, String part, Locale locale) {
        BigDecimal quantity = least.getOrDefault(place.id(), Map.of()).get(part);
        return quantity == null ? Stream.empty() : Stream.of(place.name() + " " + Written.of(quantity, locale));
    }
}
