package changeover.web.office;

import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.households.HouseholdRounds;
import changeover.scheduling.visits.HouseholdTasks;
import changeover.web.session.Desk;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Typed;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.UUID;

/** What the household tells us it did itself: written once, with the day and whoever did it, never ahead of the day. */
@Path("/{slug}/homes/{home}/household")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HouseholdPages {

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    HouseholdTasks tasks;

    @Inject
    HouseholdRounds lists;

    @Inject
    HouseCardPages cards;

    @Inject
    Today today;

    @POST
    public Response done(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    if (homes.get(home).isEmpty()) {
                        throw new NotFoundException();
                    }
                    UUID task = typed.id("task");
                    var told = FilterTelling.read(typed, today.day());
                    typed.understood();
                    if (!tasks.isOf(home, task)) {
                        throw Refusal.of("household.unknown").at("task").thrown();
                    }
                    lists.done(home, task, told);
                    return SaidOnce.at("/" + slug + "/homes/" + home, "kept");
                },
                refusals -> cards.page(home, Said.blank(), Said.again(typed, refusals, frames.locale())));
    }
}
