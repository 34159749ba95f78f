package changeover.web.api;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.stock.Held;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockLists;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
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
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What lies on the shelf and in the vans, and how it came there. A technician sees their own van. */
@Path("/api/v1/{slug}/stock")
@RolesAllowed({"owner", "office", "technician"})
public class StockApi {

    private static final BigDecimal MOST = new BigDecimal("99999");

    /** @param day the day at whose end it lay there */
    public record StockDocument(LocalDate day, List<PlaceDocument> places, List<HeldDocument> held) {}

    /** @param kind shelf or van; a van is a person's */
    public record PlaceDocument(
            UUID id, String kind, String name, @Nullable UUID person) {}

    /** @param quantity a decimal text in the part's unit; below nought where a reason was named */
    public record HeldDocument(UUID place, String part, String quantity) {}

    @Inject
    Stock stock;

    @Inject
    StockLists lists;

    @Inject
    StockPlaces places;

    @Inject
    Parts parts;

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** All places or one, all parts or one, as of a day; nought is left out. */
    @GET
    @Transactional
    public StockDocument held(
            @Nullable @QueryParam("place") String place,
            @Nullable @QueryParam("part") String part,
            @Nullable @QueryParam("day") String day) {
        UUID only = AskedInQuery.id(place);
        List<StockPlace> seen = seen().stream()
                .filter(one -> only == null || one.id().equals(only))
                .toList();
        if (only != null && seen.isEmpty()
                || part != null && parts.everKnown(part).isEmpty()) {
            throw new NotFoundException();
        }
        return document(seen, part, day == null ? today.day() : AskedInQuery.day("day", day));
    }

    /**
     * Parts come, change place or are counted: {@code kind} (receipt, move, count), {@code to} of a receipt, {@code from}
     * and {@code to} of a move, {@code at} of a count, {@code parts} (part, quantity), {@code why}. A count needs its
     * why; so does a move of more than lies there.
     */
    @POST
    @RolesAllowed({"owner", "office"})
    public Response move(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "stock " + body, () -> {
            Asked asked = Asked.of(body, json);
            String kind = asked.oneOf("kind", Set.of("receipt", "move", "count"));
            UUID from = kind.equals("move") ? place("from", asked) : new UUID(0, 0);
            UUID to = place(kind.equals("count") ? "at" : "to", asked);
            List<KnownPart.Amount> amounts =
                    asked.each("parts").stream().map(StockApi::amount).toList();
            String why = kind.equals("count") ? asked.text("why", 300) : asked.line("why", 300);
            asked.nothingElse().understood();
            UUID id = UUID.fromString(operation);
            switch (kind) {
                case "receipt" -> stock.receive(id, to, amounts, why);
                case "move" -> stock.move(id, from, to, amounts, why);
                default -> stock.count(id, to, amounts, why == null ? "" : why);
            }
            List<StockPlace> touched = places.all().stream()
                    .filter(one -> one.id().equals(to) || one.id().equals(from))
                    .toList();
            return Once.Answer.made("/api/v1/" + slug + "/stock?place=" + to, document(touched, null, today.day()));
        });
    }

    /** Another business's place is not found, before anything else is said of the request. */
    private UUID place(String member, Asked asked) {
        if (asked.value(member) == null) {
            return asked.id(member);
        }
        UUID id = asked.id(member);
        boolean understood = !id.equals(new UUID(0, 0));
        if (understood && places.find(id).isEmpty()) {
            throw new NotFoundException();
        }
        return id;
    }

    private static KnownPart.Amount amount(Asked asked) {
        var amount = new KnownPart.Amount(asked.text("part", 60), asked.decimal("quantity", BigDecimal.ZERO, MOST));
        asked.nothingElse();
        return amount;
    }

    private List<StockPlace> seen() {
        return identity.hasRole("technician")
                ? places.van(current.person()).stream().toList()
                : places.all();
    }

    private StockDocument document(List<StockPlace> seen, @Nullable String part, LocalDate day) {
        List<Held> held = lists.held(day, seen.stream().map(StockPlace::id).toList(), part);
        return new StockDocument(
                day,
                seen.stream()
                        .map(place -> new PlaceDocument(
                                place.id(),
                                place.kind(),
                                place.name(),
                                place.personId().orElse(null)))
                        .toList(),
                held.stream()
                        .map(one -> new HeldDocument(
                                one.placeId(), one.partCode(), one.quantity().toPlainString()))
                        .toList());
    }
}
