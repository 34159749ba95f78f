package changeover.web.api;

import changeover.contracts.customers.Homes;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.PartsGiven;
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

/** Filters and pads that a home gets between visits, of those that its plan gives. */
@Path("/api/v1/{slug}/homes/{home}/given")
@RolesAllowed({"owner", "office"})
public class GivenApi {

    private static final BigDecimal LEAST = new BigDecimal("0.01");
    private static final BigDecimal MOST = BigDecimal.valueOf(99);

    /** @param how left or posted */
    public record GivenDocument(
            LocalDate day, String part, Wording name, BigDecimal quantity, String how, String place) {}

    @Inject
    Homes homes;

    @Inject
    PartsGiven given;

    @Inject
    StockPlaces places;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** The newest first. */
    @GET
    @Transactional
    public List<GivenDocument> ofHome(@PathParam("home") UUID home) {
        var _ = homes.get(home).orElseThrow(NotFoundException::new);
        return given.ofHome(home).stream()
                .map(one -> new GivenDocument(
                        one.day(),
                        one.partCode(),
                        one.part(),
                        one.quantity(),
                        one.how().code(),
                        one.place()))
                .toList();
    }

    /** One is given: {@code part, quantity, place} (it comes out of), {@code how} (left, posted). */
    @POST
    public Response give(@PathParam("home") UUID home, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "given " + home + body, () -> {
            UUID known = homes.get(home).orElseThrow(NotFoundException::new).id();
            Asked asked = Asked.of(body, json);
            var amount = new KnownPart.Amount(asked.text("part", 60), asked.decimal("quantity", LEAST, MOST));
            UUID place = asked.id("place");
            String how = asked.oneOf("how", Set.of("left", "posted"));
            asked.nothingElse().understood();
            var _ = places.find(place).orElseThrow(NotFoundException::new);
            given.give(
                    Once.named(operation),
                    known,
                    amount,
                    place,
                    how.equals("posted") ? PartsGiven.How.POSTED : PartsGiven.How.LEFT);
            return Once.Answer.done(ofHome(home));
        });
    }
}
