package changeover.web.office;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.RestoringTicket;
import changeover.scheduling.stopped.StopCorrections;
import changeover.scheduling.stopped.StopDuty;
import changeover.scheduling.stopped.StopLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.StopInWords;
import changeover.web.session.StopTyped;
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
import java.util.Map;
import java.util.UUID;

/** The office adds what else has to be done about a stop, and says which ticket is the right one. */
@Path("/{slug}/stopped/{stop}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class StopCorrectionPages {

    private static final int WORDS = 2000;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance stopcorrect(Frame frame, StopInWords.View stop, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    StopLists lists;

    @Inject
    StopCorrections corrections;

    @Inject
    StopInWords words;

    @Inject
    StopTyped typing;

    @Inject
    CurrentTenant current;

    @GET
    @Path("correction")
    @Transactional
    public TemplateInstance write(@PathParam("stop") UUID id) {
        return page(found(id), Said.blank());
    }

    /** Something else has to be done, and what it rests on. */
    @POST
    @Path("additions")
    public Response add(
            @PathParam("slug") String slug, @PathParam("stop") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    UUID made = typed.id("made");
                    StopCorrections.NewDuty duty = typing.duty(typed);
                    typed.understood();
                    corrections.add(made, id, duty, current.person());
                    return SaidOnce.at("/" + slug + "/stopped/" + id, "kept");
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    /** Another ticket is the right one, with why. */
    @POST
    @Path("ticket")
    public Response ticket(
            @PathParam("slug") String slug, @PathParam("stop") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    String ticket = typed.oneOf("ticket", RestoringTicket.TICKETS);
                    String why = typed.text("why", WORDS);
                    typed.understood();
                    corrections.ticket(id, ticket, why, current.person());
                    return SaidOnce.at("/" + slug + "/stopped/" + id, "kept");
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private MachineStop found(UUID id) {
        return lists.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(MachineStop stop, Said typed) {
        Frame frame = frames.of(Tab.HOMES);
        return Pages.stopcorrect(
                frame,
                words.of(stop, frame),
                typed.over(Map.of(
                        "made", UUID.randomUUID().toString(),
                        "whose", StopDuty.OFFICE,
                        "due", frame.today().toString(),
                        "ticket", stop.ticket())));
    }
}
