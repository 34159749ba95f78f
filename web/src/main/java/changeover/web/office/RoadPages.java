package changeover.web.office;

import changeover.contracts.customers.HomesOffTheMap;
import changeover.scheduling.dayplan.RoadPaces;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.web.roads.RoadTable;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;

/** How the business reckons roads that no table knows, and the homes to which none can be reckoned. */
@Path("/{slug}/shop/roads")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RoadPages {

    private static final int SHOWN = 200;

    /**
     * @param table whether the installation has a table of roads
     * @param minutes that ten kilometres as the crow flies come to
     * @param off how many homes are on no map
     */
    public record View(boolean table, long minutes, int off, List<HomesOffTheMap.Row> homes) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance roads(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    RoadPaces paces;

    @Inject
    RoadTable table;

    @Inject
    HomesOffTheMap offTheMap;

    @GET
    @Transactional
    public TemplateInstance page() {
        AsTheCrowFlies now = paces.current();
        return page(Said.filled(Map.of(
                "detour", String.valueOf(now.detourPercent()), "speed", String.valueOf(now.kilometresAnHour()))));
    }

    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    int detour = typed.whole("detour", RoadPaces.SHORTEST_PERCENT, RoadPaces.LONGEST_PERCENT);
                    int speed = typed.whole("speed", RoadPaces.SLOWEST, RoadPaces.FASTEST);
                    typed.understood();
                    paces.set(detour, speed);
                    return SaidOnce.at("/" + slug + "/shop/roads", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        return Pages.roads(
                frames.of(Tab.SHOP),
                new View(
                        table.isInstalled(), tenKilometres(paces.current()), offTheMap.count(), offTheMap.first(SHOWN)),
                form);
    }

    private static long tenKilometres(AsTheCrowFlies pace) {
        return Math.round(10 * 60 * pace.detourPercent() / 100.0 / pace.kilometresAnHour());
    }
}
