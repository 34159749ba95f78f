package changeover.web.api;

import changeover.contracts.tenants.Today;
import changeover.scheduling.orders.NewOrder;
import changeover.scheduling.orders.OrderLists;
import changeover.scheduling.orders.PartOrder;
import changeover.scheduling.orders.PartOrders;
import changeover.scheduling.orders.PartReturns;
import changeover.scheduling.orders.ToldHow;
import changeover.scheduling.stock.StockPlaces;
import changeover.web.session.Once;
import changeover.web.session.OwnVisits;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Parts on order: written down for a visit, arrived, told, used by a second visit. */
@Path("/api/v1/{slug}/part-orders")
@RolesAllowed({"owner", "office"})
public class OrdersApi {

    static final BigDecimal MOST = new BigDecimal("9999");

    private static final int DAY_IN_MINUTES = 1440;

    @Inject
    PartOrders orders;

    @Inject
    OrderLists lists;

    @Inject
    PartReturns returns;

    @Inject
    OwnVisits visits;

    @Inject
    StockPlaces places;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param state open, by the day it is expected, or over, the newest first */
    @GET
    @Transactional
    public List<OrderDocument> list(
            @Nullable @QueryParam("state") String state,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("200") int count) {
        int from = Math.clamp(skip, 0, 1_000_000);
        int most = Math.clamp(count, 1, 500);
        List<PartOrder> found = "over".equals(AskedInQuery.oneOf("state", state, Set.of("open", "over")))
                ? lists.over(from, most)
                : lists.open().stream().skip(from).limit(most).toList();
        LocalDate day = today.day();
        return found.stream()
                .map(order -> OrderDocument.of(order, List.of(), day))
                .toList();
    }

    @GET
    @Path("{order}")
    @Transactional
    public OrderDocument one(@PathParam("order") UUID id) {
        return said(id);
    }

    /**
     * A visit waits for a part: {@code visit, part, quantity, expectedOn}, optionally {@code supplier} (whom it is always bought
     * from), {@code equipment}, {@code words} and {@code orderedOn} (today). A technician orders for their own visits.
     */
    @POST
    @RolesAllowed({"owner", "office", "technician"})
    public Response order(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "part orders " + body, () -> {
            Asked asked = Asked.of(body, json);
            var facts = new NewOrder(
                    asked.id("visit"),
                    asked.idOrNone("equipment"),
                    asked.text("part", 60),
                    asked.decimal("quantity", BigDecimal.ZERO, MOST),
                    Objects.requireNonNullElse(asked.line("supplier", 120), ""),
                    asked.day("expectedOn"),
                    asked.line("words", 500),
                    asked.dayOrNone("orderedOn"));
            asked.nothingElse();
            if (!facts.visitId().equals(new UUID(0, 0))) {
                var _ = visits.found(facts.visitId());
            }
            asked.understood();
            UUID id = orders.order(Once.named(operation), facts).id();
            return Once.Answer.made("/api/v1/" + slug + "/part-orders/" + id, said(id));
        });
    }

    /** It came: {@code quantity}, and the {@code place} it lies on, the shelf where none is named. */
    @POST
    @Path("{order}/arrival")
    public Response arrive(@PathParam("order") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "part arrival " + id + body, () -> {
            var _ = known(id);
            Asked asked = Asked.of(body, json);
            BigDecimal quantity = asked.decimal("quantity", new BigDecimal("0.0001"), MOST);
            UUID place = asked.idOrNone("place");
            asked.nothingElse().understood();
            UUID onto = place == null
                    ? places.shelf().orElseThrow(NotFoundException::new).id()
                    : place;
            var _ = places.find(onto).orElseThrow(NotFoundException::new);
            orders.arrive(Once.named(operation), id, quantity, onto);
            return Once.Answer.done(said(id));
        });
    }

    /** The supplier says another day: {@code expectedOn}, and the {@code version} that was read. */
    @POST
    @Path("{order}/promise")
    public Response promise(@PathParam("order") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "part promise " + id + body, () -> {
            var _ = known(id);
            Asked asked = Asked.of(body, json);
            LocalDate expected = asked.day("expectedOn");
            int version = asked.whole("version", 0, Integer.MAX_VALUE);
            asked.nothingElse().understood();
            orders.promise(id, expected, version);
            return Once.Answer.done(said(id));
        });
    }

    /** The customer was told: {@code how} (call, message, person) and {@code who}. */
    @POST
    @Path("{order}/notice")
    public Response tell(@PathParam("order") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "part notice " + id + body, () -> {
            var _ = known(id);
            Asked asked = Asked.of(body, json);
            String how = asked.oneOf("how", ToldHow.codes());
            String who = asked.text("who", 200);
            asked.nothingElse().understood();
            orders.tell(id, ToldHow.of(how), who);
            return Once.Answer.done(said(id));
        });
    }

    /** The visit that uses it: optionally {@code minutes} (60) and {@code last} (two weeks after everything should be here). */
    @POST
    @Path("{order}/visit")
    public Response visit(@PathParam("order") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "part visit " + id + body, () -> {
            var _ = known(id);
            Asked asked = Asked.of(body, json);
            int minutes = asked.wholeOr("minutes", 5, DAY_IN_MINUTES, 60);
            LocalDate last = asked.dayOrNone("last");
            asked.nothingElse().understood();
            var _ = orders.secondVisit(id, minutes, last);
            return Once.Answer.done(said(id));
        });
    }

    /** What has not come will not come: {@code why}. */
    @POST
    @Path("{order}/ending")
    public Response giveUp(@PathParam("order") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "part ending " + id + body, () -> {
            var _ = known(id);
            Asked asked = Asked.of(body, json);
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            orders.giveUp(id, why);
            return Once.Answer.done(said(id));
        });
    }

    // For the returns of an order. A method that is not private asks for the class's roles wherever it is called from,
    // which are
    // not those of whoever orders for their own visit: within this class the private ones are called.
    PartOrder found(UUID id) {
        return known(id);
    }

    private PartOrder known(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }

    OrderDocument document(UUID id) {
        return said(id);
    }

    private OrderDocument said(UUID id) {
        return OrderDocument.of(known(id), returns.ofOrder(id), today.day());
    }
}
