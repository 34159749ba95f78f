package changeover.web.api;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.orders.NewReturn;
import changeover.scheduling.orders.PartReturns;
import changeover.scheduling.orders.ReturnWhy;
import changeover.scheduling.stock.StockPlaces;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Parts that went back, and the credits that suppliers owe for them. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class PartReturnsApi {

    @Inject
    OrdersApi orders;

    @Inject
    PartReturns returns;

    @Inject
    StockPlaces places;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** What suppliers have not answered, the oldest first. */
    @GET
    @Path("part-returns")
    @Transactional
    public List<OrderDocument.ReturnDocument> open() {
        return returns.open().stream().map(OrderDocument::back).toList();
    }

    /**
     * What came goes back: {@code quantity, from, why} (wrong, unused, faulty), {@code to} a place of ours or nobody for the
     * supplier, optionally {@code words}, and the {@code credit} that the supplier should give.
     */
    @POST
    @Path("part-orders/{order}/returns")
    public Response giveBack(
            @PathParam("slug") String slug,
            @PathParam("order") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "part returns " + id + body, () -> {
            var _ = orders.found(id);
            Asked asked = Asked.of(body, json);
            BigDecimal quantity = asked.decimal("quantity", new BigDecimal("0.0001"), OrdersApi.MOST);
            UUID from = asked.id("from");
            UUID to = asked.idOrNone("to");
            String why = asked.oneOf("why", ReturnWhy.codes());
            String words = asked.line("words", 500);
            @Nullable
            Money credit = asked.value("credit") == null
                    ? null
                    : asked.money("credit", businesses.current().currency());
            asked.nothingElse().understood();
            var _ = places.find(from).orElseThrow(NotFoundException::new);
            if (to != null) {
                var _ = places.find(to).orElseThrow(NotFoundException::new);
            }
            returns.giveBack(
                    Once.named(operation), new NewReturn(id, quantity, from, to, ReturnWhy.of(why), words, credit));
            return Once.Answer.made("/api/v1/" + slug + "/part-orders/" + id, orders.document(id));
        });
    }

    /** The supplier answered: {@code how} (credited, refused), {@code amount} of a credit, {@code words}, optionally {@code day}. */
    @POST
    @Path("part-returns/{back}/credit")
    public Response credit(@PathParam("back") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "part credit " + id + body, () -> {
            UUID order = returns.find(id).orElseThrow(NotFoundException::new).orderId();
            Asked asked = Asked.of(body, json);
            boolean credited = asked.oneOf("how", Set.of("credited", "refused")).equals("credited");
            @Nullable
            Money amount = credited ? asked.money("amount", businesses.current().currency()) : null;
            String words = asked.line("words", 500);
            LocalDate day = asked.dayOrNone("day");
            asked.nothingElse().understood();
            returns.answer(id, day == null ? today.day() : day, amount, words);
            return Once.Answer.done(orders.document(order));
        });
    }
}
