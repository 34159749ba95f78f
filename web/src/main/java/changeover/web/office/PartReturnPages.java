package changeover.web.office;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.orders.NewReturn;
import changeover.scheduling.orders.OrderLists;
import changeover.scheduling.orders.PartOrder;
import changeover.scheduling.orders.PartReturn;
import changeover.scheduling.orders.PartReturns;
import changeover.scheduling.orders.ReturnWhy;
import changeover.scheduling.stock.StockPlaces;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A part goes back, to the shelf or to its supplier, and the supplier's credit is noted or refused. */
@Path("/{slug}/parts")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PartReturnPages {

    private static final BigDecimal LEAST = new BigDecimal("0.0001");
    private static final BigDecimal MOST = BigDecimal.valueOf(9999);

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance partback(
                Frame frame, OrderRows.Line order, List<OrderChoices.Choice> places, UUID operation, Said form);

        static native TemplateInstance partcredit(Frame frame, ReturnsInWords.Line back, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OrderLists orders;

    @Inject
    OrderRows rows;

    @Inject
    PartReturns returns;

    @Inject
    ReturnsInWords inWords;

    @Inject
    OrderChoices choices;

    @Inject
    StockPlaces places;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Path("orders/{order}/returns")
    @Transactional
    public TemplateInstance write(@PathParam("order") UUID id) {
        PartOrder order = order(id);
        String kept = Written.of(order.facts().kept(), frames.locale());
        return page(order, Said.filled(Map.of("quantity", kept)));
    }

    @POST
    @Path("orders/{order}/returns")
    public Response giveBack(
            @PathParam("slug") String slug, @PathParam("order") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = order(id);
                    UUID operation = typed.id("operation");
                    BigDecimal quantity = typed.number("quantity", LEAST, MOST);
                    UUID from = typed.id("fromPlace");
                    UUID to = typed.idOrNone("toPlace");
                    ReturnWhy why = ReturnWhy.of(typed.oneOf("why", ReturnWhy.codes()));
                    String words = typed.line("words", 500);
                    @Nullable
                    Money credit = typed.line("credit", 40) == null
                            ? null
                            : typed.money("credit", businesses.current().currency());
                    typed.understood();
                    var _ = places.find(from).orElseThrow(NotFoundException::new);
                    if (to != null) {
                        var _ = places.find(to).orElseThrow(NotFoundException::new);
                    }
                    returns.giveBack(operation, new NewReturn(id, quantity, from, to, why, words, credit));
                    return SaidOnce.at("/" + slug + "/parts/orders/" + id, "kept");
                },
                refusals -> page(order(id), Said.again(typed, placed(refusals), frames.locale())));
    }

    /** What the place lacks is said where the quantity stands. */
    private static List<Refusal> placed(List<Refusal> refusals) {
        return refusals.stream()
                .map(one -> "short".equals(one.field()) ? one.at("quantity") : one)
                .toList();
    }

    @GET
    @Path("returns/{back}")
    @Transactional
    public TemplateInstance one(@PathParam("back") UUID id) {
        PartReturn back = back(id);
        Money credit = back.credit();
        return credit(
                back,
                Said.filled(Map.of(
                        "how",
                        "credited",
                        "day",
                        today.day().toString(),
                        "amount",
                        credit == null ? "" : Written.of(credit, frames.locale()))));
    }

    @POST
    @Path("returns/{back}/credit")
    public Response credited(
            @PathParam("slug") String slug, @PathParam("back") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = back(id);
                    boolean credited =
                            typed.oneOf("how", Set.of("credited", "refused")).equals("credited");
                    LocalDate day = typed.day("day");
                    @Nullable
                    Money amount = credited
                            ? typed.money("amount", businesses.current().currency())
                            : null;
                    String words = typed.line("words", 500);
                    typed.understood();
                    returns.answer(id, day, amount, words);
                    return SaidOnce.at("/" + slug + "/parts/returns/" + id, "kept");
                },
                refusals -> credit(back(id), Said.again(typed, refusals, frames.locale())));
    }

    private PartOrder order(UUID id) {
        return orders.one(id).orElseThrow(NotFoundException::new);
    }

    private PartReturn back(UUID id) {
        return returns.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(PartOrder order, Said form) {
        Frame frame = frames.of(Tab.PARTS);
        return Pages.partback(frame, rows.line(order, frame), choices.places(), UUID.randomUUID(), form);
    }

    private TemplateInstance credit(PartReturn back, Said form) {
        Frame frame = frames.of(Tab.PARTS);
        return Pages.partcredit(frame, inWords.line(back, frame), form);
    }
}
