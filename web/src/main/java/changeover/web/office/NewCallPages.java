package changeover.web.office;

import changeover.contracts.customers.Homes;
import changeover.scheduling.calls.OnCalls;
import changeover.web.session.CallChoices;
import changeover.web.session.CallForm;
import changeover.web.session.CallTaking;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Somebody rings: the instruction that saves a life stands before every field, then one form takes the rest. */
@Path("/{slug}/calls")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NewCallPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        /** @param onCall who is on call today, or empty */
        static native TemplateInstance newcall(Frame frame, CallChoices.Around view, String onCall, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CallTaking taking;

    @Inject
    OnCalls onCalls;

    @Inject
    Homes homes;

    @Inject
    CallChoices choices;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write(@QueryParam("home") @Nullable UUID home) {
        if (home != null) {
            var _ = homes.get(home).orElseThrow(NotFoundException::new);
        }
        return page(home, "", Said.filled(taking.fresh(home)));
    }

    /** Takes the call; or, where homes were looked for, shows them beside everything that was typed. */
    @POST
    public Response take(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        if ("find".equals(fields.getFirst("do"))) {
            return desk.look(
                    () -> page(
                            choices.chosen(fields),
                            CallChoices.looked(fields),
                            Said.again(typed, List.of(), frames.locale())),
                    refusals -> page(null, "", Said.again(typed, refusals, frames.locale())));
        }
        return desk.answer(
                () -> {
                    CallForm form = taking.read(typed);
                    typed.understood();
                    taking.take(form);
                    return SaidOnce.at("/" + slug + "/calls/" + form.made(), "call-kept");
                },
                refusals -> page(choices.chosen(fields), "", Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(@Nullable UUID home, String looked, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        String onCall = onCalls.on(frame.today())
                .map(member -> member.name()
                        + member.phone().map(phone -> ", " + phone).orElse(""))
                .orElse("");
        return Pages.newcall(frame, choices.around(home, looked, frame), onCall, form);
    }
}
