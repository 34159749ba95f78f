package changeover.web.api;

import changeover.contracts.customers.HomesOffTheMap;
import changeover.scheduling.dayplan.RoadPaces;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;

/** How roads are reckoned where no table of roads says how long they take. */
@Path("/api/v1/{slug}/roads")
@RolesAllowed({"owner", "office"})
public class RoadsApi {

    /**
     * @param detourPercent the road over the straight line
     * @param kmAnHour from door to door
     * @param homesOffTheMap to how many homes no road is reckoned
     */
    public record RoadsDocument(int detourPercent, int kmAnHour, int homesOffTheMap) {}

    @Inject
    RoadPaces paces;

    @Inject
    HomesOffTheMap offTheMap;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public RoadsDocument roads() {
        return document();
    }

    /** From now on: {@code detourPercent} (100 to 300) and {@code kmAnHour} (10 to 130). */
    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "roads " + body, () -> {
            Asked asked = Asked.of(body, json);
            int detour = asked.whole("detourPercent", RoadPaces.SHORTEST_PERCENT, RoadPaces.LONGEST_PERCENT);
            int speed = asked.whole("kmAnHour", RoadPaces.SLOWEST, RoadPaces.FASTEST);
            asked.nothingElse().understood();
            paces.set(detour, speed);
            return Once.Answer.made("/api/v1/" + slug + "/roads", document());
        });
    }

    private RoadsDocument document() {
        AsTheCrowFlies now = paces.current();
        return new RoadsDocument(now.detourPercent(), now.kilometresAnHour(), offTheMap.count());
    }
}
