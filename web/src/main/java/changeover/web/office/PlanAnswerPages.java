package changeover.web.office;

import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.scheduling.calls.AnswerHours;
import changeover.scheduling.calls.PlanAnswer;
import changeover.scheduling.calls.PlanAnswers;
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
import java.util.Map;
import java.util.UUID;

/** Within how many hours a plan answers a call, and whether nights count. */
@Path("/{slug}/plans/{id}/answer")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PlanAnswerPages {

    public record View(UUID id, String plan) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance plananswer(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Plans plans;

    @Inject
    PlanAnswers answers;

    @GET
    @Transactional
    public TemplateInstance read(@PathParam("id") UUID id) {
        Plan plan = found(id);
        Said said = answers.of(id)
                .map(answer -> Said.filled(
                        Map.of("hours", String.valueOf(answer.hours()), "nights", answer.nights() ? "yes" : "")))
                .orElseGet(() -> Said.filled(Map.of("nights", "yes")));
        return page(plan, said);
    }

    @POST
    public Response write(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    PlanAnswer answer = typed.ticked("hours")
                            ? new PlanAnswer(typed.whole("hours", 1, AnswerHours.MOST), typed.ticked("nights"))
                            : null;
                    typed.understood();
                    answers.write(id, answer);
                    return SaidOnce.at("/" + slug + "/plans/" + id, "kept");
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private Plan found(UUID id) {
        return plans.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Plan plan, Said form) {
        Frame frame = frames.of(Tab.PLANS);
        return Pages.plananswer(frame, new View(plan.id(), plan.name().in(frame.locale())), form);
    }
}
