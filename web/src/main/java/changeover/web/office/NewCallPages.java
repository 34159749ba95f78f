package changeover.web.office;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.calls.EmergencyNumber;
import changeover.scheduling.calls.Heat;
import changeover.scheduling.calls.NewCallers;
import changeover.scheduling.calls.OnCalls;
import changeover.web.session.CallChoices;
import changeover.web.session.CallForm;
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
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Somebody rings: the instruction that saves a life stands before every field, then one form takes the rest. */
@Path("/{slug}/calls")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NewCallPages {

    /**
     * What stands around the form.
     *
     * @param number the emergency number where one is known
     * @param places the home in hand, and those that were found
     * @param asked whether homes were looked for
     * @param onCall who is on call today, or empty
     */
    public record View(
            String number,
            List<CallChoices.Choice> lives,
            List<CallChoices.Choice> others,
            List<CallChoices.Choice> troubles,
            List<CallChoices.Place> places,
            boolean asked,
            String onCall) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance newcall(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Calls calls;

    @Inject
    NewCallers newcomers;

    @Inject
    OnCalls onCalls;

    @Inject
    Homes homes;

    @Inject
    CallChoices choices;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write(@QueryParam("home") @Nullable UUID home) {
        if (home != null) {
            var _ = known(home);
        }
        LocalDateTime now = today.time().truncatedTo(ChronoUnit.MINUTES);
        var fields = new LinkedHashMap<String, String>();
        fields.put("made", UUID.randomUUID().toString());
        fields.put("day", now.toLocalDate().toString());
        fields.put("time", now.toLocalTime().toString());
        fields.put("heat", Heat.UNKNOWN.code());
        fields.put("language", businesses.current().language());
        fields.put("home", home == null ? "" : home.toString());
        return page(home, "", Said.filled(fields));
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
                    Business business = businesses.current();
                    CallForm form = CallForm.read(typed, business.zone(), business.currency());
                    UUID home = form.home();
                    if (home != null) {
                        var _ = known(home);
                    }
                    typed.understood();
                    if (calls.find(form.made()).isEmpty()) {
                        UUID where = home == null ? newcomers.enter(form.newcomer()) : home;
                        var _ = calls.take(form.made(), form.said().at(where), today.now());
                    }
                    return SaidOnce.at("/" + slug + "/calls/" + form.made(), "call-kept");
                },
                refusals -> page(choices.chosen(fields), "", Said.again(typed, refusals, frames.locale())));
    }

    private Home known(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(@Nullable UUID home, String looked, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.newcall(
                frame,
                new View(
                        EmergencyNumber.in(businesses.current().country()).orElse(""),
                        CallChoices.risks(true, frame),
                        CallChoices.risks(false, frame),
                        CallChoices.troubles(frame),
                        choices.places(home, looked),
                        !looked.isEmpty(),
                        onCalls.on(frame.today())
                                .map(member -> member.name()
                                        + member.phone()
                                                .map(phone -> ", " + phone)
                                                .orElse(""))
                                .orElse("")),
                form);
    }
}
