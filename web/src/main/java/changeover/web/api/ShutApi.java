package changeover.web.api;

import changeover.contracts.customers.Homes;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.VisitsShutOut;
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
import java.util.List;
import java.util.UUID;

/** When a home is shut, and the visits that have a day then; nothing is planned into these days. */
@Path("/api/v1/{slug}/homes/{home}/shut")
@RolesAllowed({"owner", "office"})
public class ShutApi {

    /** @param booked visits that have a day on which the home is shut */
    public record ShutDocument(UUID home, List<HomesShut.Shut> times, List<VisitsShutOut.Booked> booked) {}

    @Inject
    Homes homes;

    @Inject
    HomesShut shut;

    @Inject
    VisitsShutOut visits;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public ShutDocument look(@PathParam("home") UUID home) {
        known(home);
        return document(home);
    }

    /** A time: {@code from}, optionally {@code until} (open again on that day), {@code heatOff, waterDrained, note}. */
    @POST
    public Response add(@PathParam("home") UUID home, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "shut " + home + body, () -> {
            known(home);
            Asked asked = Asked.of(body, json);
            var facts = new HomesShut.Facts(
                    asked.day("from"),
                    asked.dayOrNone("until"),
                    asked.yes("heatOff"),
                    asked.yes("waterDrained"),
                    asked.line("note", 500));
            asked.nothingElse().understood();
            shut.shut(home, facts);
            return Once.Answer.done(document(home));
        });
    }

    /** The home is open again from a {@code day}; a day up to the first says that it never was shut. */
    @POST
    @Path("{shut}/opening")
    public Response open(
            @PathParam("home") UUID home,
            @PathParam("shut") UUID time,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "opening " + time + body, () -> {
            known(home);
            if (shut.of(home).stream().noneMatch(one -> one.id().equals(time))) {
                throw new NotFoundException();
            }
            Asked asked = Asked.of(body, json);
            var day = asked.day("day");
            asked.nothingElse().understood();
            shut.opens(home, time, day);
            return Once.Answer.done(document(home));
        });
    }

    private ShutDocument document(UUID home) {
        return new ShutDocument(home, shut.of(home), visits.booked(home, today.day()));
    }

    private void known(UUID home) {
        if (homes.get(home).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
