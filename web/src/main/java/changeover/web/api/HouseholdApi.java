package changeover.web.api;

import changeover.contracts.tenants.Today;
import changeover.scheduling.households.FilterLooks;
import changeover.scheduling.households.HouseholdRounds;
import changeover.scheduling.visits.HouseholdTasks;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.UUID;

/** What the household does itself, as it tells us. */
@Path("/api/v1/{slug}/homes/{home}/household")
@RolesAllowed({"owner", "office"})
public class HouseholdApi {

    @Inject
    HouseholdTasks tasks;

    @Inject
    HouseholdRounds lists;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /**
     * A task of the year's household list was done, {@code by} somebody; optionally {@code day} (today), and of a filter
     * {@code found} (clean, grey) and {@code changed}.
     */
    @POST
    @Path("{task}/doing")
    public Response done(
            @PathParam("home") UUID home,
            @PathParam("task") UUID task,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "household " + home + task + body, () -> {
            if (!tasks.isOf(home, task)) {
                throw new NotFoundException();
            }
            Asked asked = Asked.of(body, json);
            FilterLooks.Telling told = RhythmsApi.told(asked, today.day());
            asked.nothingElse().understood();
            lists.done(home, task, told);
            return Once.Answer.done(Map.of("task", task, "done", told.day()));
        });
    }
}
