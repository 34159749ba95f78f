package changeover.web.field;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.MachineStops;
import changeover.scheduling.stopped.NewStop;
import changeover.scheduling.stopped.StopDeeds;
import changeover.scheduling.stopped.StopEnd;
import changeover.scheduling.stopped.StopLists;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
import changeover.web.session.OwnVisits;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.StopInWords;
import changeover.web.session.StopTyped;
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
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What must not be used in the home of a visit: stopped by whoever stands there, put back by whoever holds the ticket. */
@Path("/{slug}/field/visits/{id}/stopped")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FieldStopPages {

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance newstop(
                Frame frame,
                UUID visit,
                String home,
                List<StopInWords.View> stops,
                List<OrderChoices.Choice> machines,
                String made,
                Said form);

        static native TemplateInstance stop(
                Frame frame, UUID visit, StopInWords.View stop, StopInWords.Holders holders, String place, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OwnVisits visits;

    @Inject
    OrderChoices choices;

    @Inject
    MachineStops stops;

    @Inject
    StopDeeds deeds;

    @Inject
    StopLists lists;

    @Inject
    StopInWords words;

    @Inject
    StopTyped typing;

    @Inject
    CurrentTenant current;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        return page(visits.found(id), UUID.randomUUID().toString(), Said.blank());
    }

    /** Anybody stops, with or without a ticket. */
    @POST
    public Response stop(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    VisitLists.Row row = visits.found(id);
                    UUID made = typed.id("made");
                    NewStop facts = typing.stop(row.homeId(), id, typed, frames.locale());
                    UUID stop = stops.stop(made, facts, current.person()).id();
                    return SaidOnce.at(address(slug, id, stop), "stopped");
                },
                refusals -> page(
                        visits.found(id),
                        Telling.form(typed).toString(),
                        Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("{stop}")
    @Transactional
    public TemplateInstance one(@PathParam("id") UUID id, @PathParam("stop") UUID stop) {
        return page(id, found(id, stop), Said.blank());
    }

    @POST
    @Path("{stop}/duties")
    public Response duty(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @PathParam("stop") UUID stop,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id, stop);
                    String code = typed.text("code", 60);
                    String who = typed.text("who", 200);
                    LocalDate day = typed.day("day");
                    String said = typed.line("words", 2000);
                    typed.understood();
                    deeds.done(stop, code, who, day, said);
                    return SaidOnce.at(address(slug, id, stop), "kept");
                },
                refusals -> again(id, stop, typed, refusals));
    }

    @POST
    @Path("{stop}/heat")
    public Response heat(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @PathParam("stop") UUID stop,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id, stop);
                    HeatAnswer answer = typing.heat(typed);
                    deeds.heat(stop, answer, current.person());
                    return SaidOnce.at(address(slug, id, stop), "kept");
                },
                refusals -> again(id, stop, typed, refusals));
    }

    /** Only with the ticket; without it the page says who holds one. */
    @POST
    @Path("{stop}/service")
    public Response end(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @PathParam("stop") UUID stop,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id, stop);
                    StopEnd how = typing.end(typed);
                    String done = typed.line("done", 2000);
                    typed.understood();
                    deeds.end(stop, how, done == null ? "" : done, current.person());
                    return SaidOnce.at(address(slug, id, stop), "stop-ended");
                },
                refusals -> again(id, stop, typed, refusals));
    }

    private static String address(String slug, UUID visit, UUID stop) {
        return "/" + slug + "/field/visits/" + visit + "/stopped/" + stop;
    }

    /** A stop of the home in which the visit is, or of its building; of another one it is not found. */
    private MachineStop found(UUID visit, UUID stop) {
        return lists.in(visits.found(visit).homeId(), stop).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance again(UUID visit, UUID stop, Typed typed, List<Refusal> refusals) {
        return page(visit, found(visit, stop), Said.again(typed, refusals, frames.locale()));
    }

    private TemplateInstance page(UUID visit, MachineStop stop, Said typed) {
        Frame frame = frames.of(null);
        Map<String, List<String>> values = new HashMap<>();
        values.put("who", List.of(frame.person()));
        values.put("day", List.of(frame.today().toString()));
        values.put("how", List.of("in_service"));
        values.putAll(typed.values());
        return Pages.stop(
                frame,
                visit,
                words.of(stop, frame),
                words.holders(stop, frame),
                address(frame.slug(), visit, stop.id()),
                new Said(values, typed.errors(), typed.top()));
    }

    private TemplateInstance page(VisitLists.Row row, String made, Said form) {
        Frame frame = frames.of(null);
        return Pages.newstop(
                frame,
                row.id(),
                row.street() + ", " + row.city(),
                words.of(lists.openIn(List.of(row.homeId())).getOrDefault(row.homeId(), List.of()), frame),
                choices.machines(row.homeId()),
                made,
                form);
    }
}
