package changeover.web.office;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.OwnIntervals;
import changeover.contracts.customers.Equipment;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.households.FilterLooks;
import changeover.scheduling.households.FilterSlot;
import changeover.scheduling.households.FilterSlots;
import changeover.scheduling.households.HouseholdRounds;
import changeover.scheduling.households.SlotRhythms;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** How long filters last in one home: what was seen, what follows from it, and what a person decides instead. */
@Path("/{slug}/homes/{place}/machines/{machine}/rhythm")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RhythmPages {

    private static final int MOST_WEEKS = 104;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance rhythm(
                Frame frame, MachinePlaces.Place place, Equipment machine, RhythmView view, Said form);

        private Pages() {}
    }

    @PathParam("slug")
    String slug;

    @PathParam("place")
    UUID placeId;

    @PathParam("machine")
    UUID machineId;

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    MachinePlaces places;

    @Inject
    FilterSlots slots;

    @Inject
    FilterLooks looks;

    @Inject
    SlotRhythms rhythms;

    @Inject
    RhythmViews views;

    @Inject
    HouseholdRounds rounds;

    @Inject
    OwnIntervals intervals;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance read() {
        return page(Said.filled(Map.of("day", today.day().toString())));
    }

    /** What somebody told of the filter between visits. */
    @POST
    @Path("looks")
    public Response tell(MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    FilterSlot slot = slot();
                    var told = FilterTelling.read(typed, today.day());
                    typed.understood();
                    looks.tell(slot, told, null);
                    rounds.follow(List.of(slot));
                    return SaidOnce.at(path(), "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    /** It was told by mistake: it counts no more. */
    @POST
    @Path("looks/{look}/withdrawal")
    public Response takeBack(@PathParam("look") UUID look, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    if (!rounds.takeBack(slot(), look)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at(path(), "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    /** A person decides: the household's list follows that, with who decided and why. */
    @POST
    @Path("word")
    public Response decide(MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    FilterSlot slot = slot();
                    int look = typed.whole("look", 1, MOST_WEEKS);
                    int change = typed.whole("change", 1, MOST_WEEKS);
                    String why = typed.text("why", 200);
                    if (typed.refusals().isEmpty() && change < look) {
                        typed.refuse(Refusal.of("filter.change-before-look").at("change"));
                    }
                    typed.understood();
                    intervals.keep(new Interval(
                            slot.taskCode(),
                            slot.id(),
                            new Cadence.LookThenChange(look * 7, change * 7),
                            why,
                            null,
                            new Interval.Decided(frames.of(Tab.HOMES).person(), today.day())));
                    rounds.follow(List.of(slot));
                    return SaidOnce.at(path(), "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    /** Back to what was learned, or sold. */
    @POST
    @Path("word/ending")
    public Response endWord(MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    FilterSlot slot = slot();
                    if (!intervals.forget(slot.taskCode(), slot.id())) {
                        throw new NotFoundException();
                    }
                    rounds.wordEnded(slot);
                    return SaidOnce.at(path(), "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.HOMES);
        slot();
        return Pages.rhythm(
                frame,
                place(),
                places.machine(place(), machineId).orElseThrow(NotFoundException::new),
                views.of(rhythms.of(machineId).orElseThrow(NotFoundException::new), frame),
                form);
    }

    private MachinePlaces.Place place() {
        return places.of("homes", placeId).orElseThrow(NotFoundException::new);
    }

    private FilterSlot slot() {
        return slots.find(machineId)
                .filter(slot -> slot.homeId().equals(placeId))
                .orElseThrow(NotFoundException::new);
    }

    private String path() {
        return "/" + slug + "/homes/" + placeId + "/machines/" + machineId + "/rhythm";
    }
}
