package changeover.web.api;

import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.change.FittingIn;
import changeover.scheduling.dayplan.change.Insertions;
import changeover.scheduling.visits.Visits;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One visit more in a day: the three ways that disturb it least, one of them taken. No told hour is moved. */
@Path("/api/v1/{slug}/visits/{id}/insertions")
@RolesAllowed({"owner", "office"})
public class InsertionsApi {

    /**
     * One way.
     *
     * @param shown the number that says yes to it
     * @param second who goes along where two must go; else null
     * @param onCall whether somebody of them is on call then, and works no other hours
     * @param road minutes more on the road; below nought where it is less
     * @param later minutes that others begin later, all together
     */
    public record Way(
            int shown,
            UUID technician,
            @Nullable UUID second,
            boolean onCall,
            LocalTime starts,
            LocalTime ends,
            int road,
            int later,
            List<Moved> moved) {}

    public record Moved(UUID visit, LocalTime from, LocalTime to) {}

    /**
     * @param roads crow, table, or crow_for_table where the table of roads has not answered
     * @param people how many must go
     */
    public record WaysDocument(UUID visit, LocalDate day, String roads, int people, List<Way> ways) {}

    public record TakenDocument(HourDocument appointment, List<Moved> moved) {}

    @Inject
    FittingIn fitting;

    @Inject
    Visits visits;

    @Inject
    HourDocuments documents;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param said the day to fit it into; today when none is named */
    @GET
    @Transactional
    public WaysDocument ways(@PathParam("id") UUID id, @Nullable @QueryParam("day") String said) {
        known(id);
        LocalDate day = said == null ? today.day() : AskedInQuery.day("day", said);
        FittingIn.Ways ways = fitting.ways(id, day);
        return new WaysDocument(
                id,
                day,
                ways.roads().code(),
                ways.people(),
                ways.offers().stream().map(InsertionsApi::way).toList());
    }

    /**
     * Takes a way: {@code day} and {@code shown}; with {@code askedBy} and {@code why} where the customer was told the hour
     * that the visit has. Refused where that way is no longer one of the three.
     */
    @POST
    public Response take(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "insertion " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.day("day");
            int shown = asked.whole("shown", 0, Integer.MAX_VALUE);
            @Nullable Moving moving = HourDocuments.moving(asked);
            asked.nothingElse().understood();
            Insertions.Offer offer = fitting.take(id, day, shown, moving);
            return Once.Answer.done(new TakenDocument(documents.of(id), moved(offer)));
        });
    }

    private static Way way(Insertions.Offer offer) {
        return new Way(
                FittingIn.shown(offer),
                offer.technician(),
                offer.second().orElse(null),
                offer.onCall(),
                Minutes.time(offer.starts()),
                Minutes.time(offer.ends()),
                offer.road(),
                offer.later(),
                moved(offer));
    }

    private static List<Moved> moved(Insertions.Offer offer) {
        return offer.moved().stream()
                .map(one -> new Moved(one.visit(), Minutes.time(one.from()), Minutes.time(one.to())))
                .toList();
    }

    private void known(UUID id) {
        if (visits.find(id).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
