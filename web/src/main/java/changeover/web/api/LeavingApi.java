package changeover.web.api;

import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.Leaving;
import changeover.scheduling.dayplan.change.SharedOut;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.VansLeft;
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
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Somebody leaves: what they have after their last day, which {@code ending} writes, and what lies in their van. */
@Path("/api/v1/{slug}/people/{id}/leaving")
@RolesAllowed("owner")
public class LeavingApi {

    private static final BigDecimal MOST = BigDecimal.valueOf(9999);

    /** @param lying what should lie in the van; none where no van of theirs is in use */
    public record LeavingDocument(
            UUID person,
            @Nullable LocalDate last,
            List<Leaving.Left> visits,
            @Nullable UUID van,
            List<VansLeft.Lying> lying) {}

    /**
     * @param along whether they only went along: whoever leads keeps it
     * @param technician who makes it, or goes along instead; null, with the hour, where it went back to the season or wants somebody
     *     else to go along
     */
    public record Handed(
            LocalDate day,
            UUID visit,
            boolean along,
            @Nullable UUID technician,
            @Nullable LocalTime starts) {}

    @Inject
    People people;

    @Inject
    Leaving leaving;

    @Inject
    VansLeft vans;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public LeavingDocument look(@PathParam("id") UUID id) {
        return document(member(id));
    }

    /** Hands their visits over, a day at a time: {@code why}. Whoever must hear of it stands in {@code rings}. */
    @POST
    @Path("visits")
    public Response visits(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "leaving visits " + id + body, () -> {
            Membership member = member(id);
            Asked asked = Asked.of(body, json);
            String why = asked.text("why", 200);
            asked.nothingElse().understood();
            LocalDate last = member.untilDay()
                    .orElseThrow(() -> Refusal.of("leaving.last-day-first").thrown());
            return Once.Answer.done(leaving.handOver(id, last, why).stream()
                    .flatMap(day -> day.shares().stream().map(one -> handed(day.day(), one)))
                    .toList());
        });
    }

    /** Empties the van: {@code counted} (part, quantity), {@code to} which place it goes, {@code why}. What is not counted was not there. */
    @POST
    @Path("van")
    public Response van(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "leaving van " + id + body, () -> {
            Membership member = member(id);
            Asked asked = Asked.of(body, json);
            UUID to = asked.id("to");
            String why = asked.text("why", 200);
            List<VansLeft.Lying> counted = asked.each("counted").stream()
                    .map(one ->
                            new VansLeft.Lying(one.text("part", 40), one.decimal("quantity", BigDecimal.ZERO, MOST)))
                    .toList();
            asked.nothingElse().understood();
            vans.empty(id, to, counted, why);
            return Once.Answer.done(document(member));
        });
    }

    private static Handed handed(LocalDate day, SharedOut.Share one) {
        boolean back = one.technician() == null;
        return new Handed(day, one.visit(), one.along(), one.technician(), back ? null : Minutes.time(one.starts()));
    }

    private LeavingDocument document(Membership member) {
        LocalDate last = member.untilDay().orElse(null);
        UUID id = member.personId();
        StockPlace van = vans.van(id).orElse(null);
        return new LeavingDocument(
                id,
                last,
                last == null ? List.of() : leaving.left(id, last),
                van == null ? null : van.id(),
                van == null ? List.of() : vans.lying(van.id()));
    }

    private Membership member(UUID id) {
        return people.of(id).orElseThrow(NotFoundException::new);
    }
}
