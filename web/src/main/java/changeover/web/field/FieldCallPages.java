package changeover.web.field;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Became;
import changeover.scheduling.calls.CallOutcome;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.dayplan.Appointments;
import changeover.web.session.CallChoices;
import changeover.web.session.CallForm;
import changeover.web.session.CallTaking;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
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
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Somebody rings at night: whoever is on call takes it down, life first, and goes there, advises, or leaves it to the office. */
@Path("/{slug}/field/calls")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FieldCallPages {

    private static final int DAY_IN_MINUTES = 1440;
    private static final int USUAL_MINUTES = 60;
    private static final int HALF_A_DAY = 12;

    /** The office finds the call on its list. */
    private static final String LEFT = "office";

    private static final Set<String> NOW = Set.of(Became.VISIT.code(), Became.ADVICE.code(), LEFT);

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance newcall(Frame frame, CallChoices.Around view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Calls calls;

    @Inject
    CallTaking taking;

    @Inject
    TakesCalls takes;

    @Inject
    Appointments appointments;

    @Inject
    CallChoices choices;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write() {
        Map<String, String> fields = taking.fresh(null);
        fields.put("how", Became.VISIT.code());
        fields.put("minutes", String.valueOf(USUAL_MINUTES));
        fields.put(
                "starts",
                today.time().truncatedTo(ChronoUnit.MINUTES).toLocalTime().toString());
        return page(null, "", Said.filled(fields));
    }

    /** Takes the call and answers it in one; or, where homes were looked for, shows them beside everything that was typed. */
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
                    takes.must();
                    CallForm form = taking.read(typed);
                    var answer = Answer.read(typed);
                    typed.understood();
                    if (taking.take(form)) {
                        answer(form.made(), answer);
                    }
                    return next(slug, form.made());
                },
                refusals -> page(choices.chosen(fields), "", Said.again(typed, refusals, frames.locale())));
    }

    /**
     * What happens now.
     *
     * @param why why somebody goes, or what was advised
     */
    private record Answer(String how, String why, int minutes, LocalTime starts) {

        static Answer read(Typed typed) {
            String how = typed.oneOf("how", NOW);
            boolean goes = how.equals(Became.VISIT.code());
            return new Answer(
                    how,
                    how.equals(LEFT) ? "" : typed.text("why", 1000),
                    goes ? typed.whole("minutes", 5, DAY_IN_MINUTES) : 0,
                    goes ? typed.time("starts") : LocalTime.MIDNIGHT);
        }
    }

    private void answer(UUID call, Answer said) {
        if (said.how().equals(Became.ADVICE.code())) {
            var _ = calls.advice(call, said.why(), today.now());
        } else if (said.how().equals(Became.VISIT.code())) {
            UUID visit = calls.visit(call, said.minutes(), null, said.why(), today.now())
                    .visitId()
                    .orElseThrow();
            LocalDateTime there = soonest(said.starts(), today.time());
            var slot = new Appointments.Slot(current.person(), there.toLocalDate(), there.toLocalTime(), null);
            var _ = appointments.give(visit, slot);
        }
    }

    /** An hour said at night without its day: today's, or tomorrow's where today's is half a day past. */
    static LocalDateTime soonest(LocalTime starts, LocalDateTime now) {
        LocalDateTime today = now.toLocalDate().atTime(starts);
        return today.isBefore(now.minusHours(HALF_A_DAY)) ? today.plusDays(1) : today;
    }

    private String next(String slug, UUID call) {
        CallOutcome outcome = calls.outcome(call).orElse(null);
        String day = "/" + slug + "/field";
        if (outcome == null) {
            return SaidOnce.at(day, "call-left");
        }
        return outcome.visitId()
                .map(visit -> SaidOnce.at(day + "/visits/" + visit, "call-mine"))
                .orElseGet(() -> SaidOnce.at(day, "call-advised"));
    }

    private TemplateInstance page(@Nullable UUID home, String looked, Said form) {
        takes.must();
        Frame frame = frames.of(null);
        return Pages.newcall(frame, choices.around(home, looked, frame), form);
    }
}
