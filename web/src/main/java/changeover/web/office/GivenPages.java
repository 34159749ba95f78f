package changeover.web.office;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.scheduling.households.FilterSlot;
import changeover.scheduling.households.FilterSlots;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.PartsGiven;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Filters and pads that a home gets between visits, left at the door or posted: out of stock, and of those that its plan gives. */
@Path("/{slug}/homes/{home}/given")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class GivenPages {

    private static final BigDecimal LEAST = new BigDecimal("0.01");
    private static final BigDecimal MOST = BigDecimal.valueOf(99);

    public record Choice(String code, String words) {}

    /** @param posted else it was left at the home */
    public record Row(String day, String part, String quantity, boolean posted, String place) {}

    public record View(
            UUID home, String line, UUID operation, List<Row> rows, List<Choice> parts, List<Choice> places) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance given(Frame frame, View view, Said form);

        private Pages() {}
    }

    private static final String FILTER = "filter";

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    PartsGiven given;

    @Inject
    Parts parts;

    @Inject
    FilterSlots slots;

    @Inject
    StockPlaces places;

    @GET
    @Transactional
    public TemplateInstance list(@PathParam("home") UUID home) {
        return page(home, Said.blank());
    }

    @POST
    public Response give(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID known =
                            homes.get(home).orElseThrow(NotFoundException::new).id();
                    UUID operation = typed.id("operation");
                    var amount = new KnownPart.Amount(typed.text("part", 60), typed.number("quantity", LEAST, MOST));
                    UUID place = typed.id("place");
                    String how = typed.oneOf("how", Set.of("left", "posted"));
                    typed.understood();
                    var _ = places.find(place).orElseThrow(NotFoundException::new);
                    given.give(
                            operation,
                            known,
                            amount,
                            place,
                            how.equals("posted") ? PartsGiven.How.POSTED : PartsGiven.How.LEFT);
                    return SaidOnce.at("/" + slug + "/homes/" + home + "/given", "kept");
                },
                refusals -> page(home, Said.again(typed, refusals, frames.locale())));
    }

    /** What goes into a filter slot of the home comes first. */
    private List<KnownPart> known(UUID home) {
        List<String> sizes = slots.ofHomes(List.of(home)).stream()
                .map(FilterSlot::size)
                .filter(size -> !size.isEmpty())
                .toList();
        List<KnownPart> all = parts.all();
        Set<String> first = sizes.stream()
                .flatMap(size -> Parts.fitting(all, FILTER, size).stream())
                .map(KnownPart::code)
                .collect(Collectors.toSet());
        return all.stream()
                .sorted(Comparator.comparing(part -> !first.contains(part.code())))
                .toList();
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.HOMES);
        Home home = homes.get(id).orElseThrow(NotFoundException::new);
        return Pages.given(
                frame,
                new View(
                        id,
                        home.line(),
                        UUID.randomUUID(),
                        given.ofHome(id).stream()
                                .map(one -> new Row(
                                        frame.brief(one.day()),
                                        one.part().in(frame.locale()),
                                        Written.of(one.quantity(), frame.locale()),
                                        one.how() == PartsGiven.How.POSTED,
                                        one.place()))
                                .toList(),
                        known(id).stream()
                                .map(part -> new Choice(part.code(), part.name().in(frame.locale())))
                                .toList(),
                        places.all().stream()
                                .map(place -> new Choice(place.id().toString(), place.name()))
                                .toList()),
                form);
    }
}
