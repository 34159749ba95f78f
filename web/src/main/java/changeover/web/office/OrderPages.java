package changeover.web.office;

import changeover.contracts.words.Refusal;
import changeover.scheduling.orders.OrderLists;
import changeover.scheduling.orders.PartOrder;
import changeover.scheduling.orders.PartOrders;
import changeover.scheduling.orders.ToldHow;
import changeover.scheduling.stock.StockPlaces;
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
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;

/** Parts on order: by the day they are expected, and one of them from its arrival to the visit that uses it. */
@Path("/{slug}/parts/orders")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class OrderPages {

    private static final int PAGE = 50;
    private static final int DAY_IN_MINUTES = 1440;
    private static final BigDecimal LEAST = new BigDecimal("0.0001");
    private static final BigDecimal MOST = BigDecimal.valueOf(9999);

    /** Where a field of the rules stands on the page of one order, whose forms may not share a name. */
    private static final Map<String, Map<String, String>> FIELDS = Map.of(
            "arrival", Map.of("quantity", "arrived", "place", "place"),
            "ending", Map.of("why", "endWhy"));

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance orders(
                Frame frame,
                List<OrderRows.Line> open,
                List<ReturnsInWords.Line> returns,
                List<OrderRows.Line> over,
                int from,
                boolean more);

        static native TemplateInstance order(Frame frame, OrderInWords.Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OrderRows rows;

    @Inject
    ReturnsInWords returns;

    @Inject
    OrderInWords inWords;

    @Inject
    OrderLists lists;

    @Inject
    PartOrders orders;

    @Inject
    StockPlaces places;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("from") @DefaultValue("0") int from) {
        Frame frame = frames.of(Tab.PARTS);
        int start = Math.clamp(from, 0, 1_000_000);
        List<OrderRows.Line> over = rows.over(frame, start, PAGE + 1);
        return Pages.orders(
                frame,
                start == 0 ? rows.open(frame) : List.of(),
                start == 0 ? returns.open(frame) : List.of(),
                over.stream().limit(PAGE).toList(),
                start,
                over.size() > PAGE);
    }

    @GET
    @Path("{order}")
    @Transactional
    public TemplateInstance one(@PathParam("order") UUID id) {
        PartOrder order = found(id);
        Frame frame = frames.of(Tab.PARTS);
        return Pages.order(frame, inWords.of(order, frame), Said.filled(inWords.filled(order, frame)));
    }

    @POST
    @Path("{order}/arrival")
    public Response arrive(
            @PathParam("slug") String slug, @PathParam("order") UUID id, MultivaluedMap<String, String> fields) {
        return done(slug, id, "arrival", fields, typed -> {
            UUID operation = typed.id("operation");
            BigDecimal quantity = typed.number("arrived", LEAST, MOST);
            UUID place = typed.id("place");
            typed.understood();
            var _ = places.find(place).orElseThrow(NotFoundException::new);
            orders.arrive(operation, id, quantity, place);
        });
    }

    /** The supplier says another day. */
    @POST
    @Path("{order}/promise")
    public Response promise(
            @PathParam("slug") String slug, @PathParam("order") UUID id, MultivaluedMap<String, String> fields) {
        return done(slug, id, "promise", fields, typed -> {
            var expected = typed.day("expected");
            int version = typed.whole("version", 0, Integer.MAX_VALUE);
            typed.understood();
            orders.promise(id, expected, version);
        });
    }

    /** The customer was told. */
    @POST
    @Path("{order}/notice")
    public Response tell(
            @PathParam("slug") String slug, @PathParam("order") UUID id, MultivaluedMap<String, String> fields) {
        return done(slug, id, "notice", fields, typed -> {
            ToldHow how = ToldHow.of(typed.oneOf("how", ToldHow.codes()));
            String who = typed.text("who", 200);
            typed.understood();
            orders.tell(id, how, who);
        });
    }

    @POST
    @Path("{order}/ending")
    public Response giveUp(
            @PathParam("slug") String slug, @PathParam("order") UUID id, MultivaluedMap<String, String> fields) {
        return done(slug, id, "ending", fields, typed -> {
            String why = typed.text("endWhy", 500);
            typed.understood();
            orders.giveUp(id, why);
        });
    }

    /** The visit that uses it, and whatever else the same visit waits for. */
    @POST
    @Path("{order}/visit")
    public Response visit(
            @PathParam("slug") String slug, @PathParam("order") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    int minutes = typed.whole("minutes", 5, DAY_IN_MINUTES);
                    var last = typed.dayOrNone("last");
                    typed.understood();
                    return SaidOnce.at("/" + slug + "/visits/" + orders.secondVisit(id, minutes, last), "part-visit");
                },
                refusals -> again(id, typed, refusals));
    }

    private Response done(
            String slug, UUID id, String deed, MultivaluedMap<String, String> fields, Consumer<Typed> doing) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    doing.accept(typed);
                    return SaidOnce.at("/" + slug + "/parts/orders/" + id, "kept");
                },
                refusals -> again(
                        id,
                        typed,
                        refusals.stream().map(one -> placed(deed, one)).toList()));
    }

    private static Refusal placed(String deed, Refusal refusal) {
        String field = refusal.field();
        String there =
                field == null ? null : FIELDS.getOrDefault(deed, Map.of()).get(field);
        return there == null ? refusal : refusal.at(there);
    }

    private TemplateInstance again(UUID id, Typed typed, List<Refusal> refusals) {
        Frame frame = frames.of(Tab.PARTS);
        PartOrder order = found(id);
        Said typedAgain = Said.again(typed, refusals, frame.locale());
        return Pages.order(frame, inWords.of(order, frame), typedAgain.over(inWords.filled(order, frame)));
    }

    private PartOrder found(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }
}
