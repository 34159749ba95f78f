package changeover.web.api;

import changeover.contracts.plans.Plans;
import changeover.scheduling.calls.AnswerHours;
import changeover.scheduling.calls.AnswerTimes;
import changeover.scheduling.calls.PlanAnswer;
import changeover.scheduling.calls.PlanAnswers;
import changeover.scheduling.calls.Urgency;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Within how many hours a caller is promised an answer: the business's own times by urgency, and what a plan says. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class AnswerTimesApi {

    private static final Set<String> URGENCIES =
            Arrays.stream(Urgency.values()).map(Urgency::code).collect(Collectors.toSet());

    /** @param urgency life, urgent, soon or ordinary */
    public record Hours(String urgency, boolean plan, int hours) {}

    /** @param hours null where the plan says nothing */
    public record OfPlan(UUID plan, @Nullable Integer hours, boolean nights) {}

    @Inject
    AnswerTimes times;

    @Inject
    PlanAnswers answers;

    @Inject
    Plans plans;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Path("answer-times")
    @Transactional
    public List<Hours> hours() {
        AnswerHours hours = times.hours();
        return Arrays.stream(Urgency.values())
                .flatMap(urgency ->
                        Stream.of(true, false).map(plan -> new Hours(urgency.code(), plan, hours.of(urgency, plan))))
                .toList();
    }

    /** Writes those that are named in {@code times}, each {@code urgency, plan} (yes or no) and {@code hours}; the others stay. */
    @POST
    @Path("answer-times")
    @RolesAllowed("owner")
    public Response write(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "answer times " + body, () -> {
            Asked asked = Asked.of(body, json);
            Map<AnswerHours.Asked, Integer> written = new HashMap<>();
            for (Asked one : asked.each("times")) {
                String urgency = one.oneOf("urgency", URGENCIES);
                boolean plan = one.yes("plan");
                int hours = one.whole("hours", 1, AnswerHours.MOST);
                one.nothingElse();
                if (URGENCIES.contains(urgency)) {
                    written.put(new AnswerHours.Asked(Urgency.ofCode(urgency), plan), hours);
                }
            }
            asked.nothingElse().understood();
            times.write(written);
            return Once.Answer.done(hours());
        });
    }

    @GET
    @Path("plans/{id}/answer")
    @Transactional
    public OfPlan ofPlan(@PathParam("id") UUID id) {
        known(id);
        return document(id);
    }

    /** {@code hours}, left out for the business's own times alone, and whether {@code nights} count. */
    @POST
    @Path("plans/{id}/answer")
    public Response writeOfPlan(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "plan answer " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            boolean nights = asked.yes("nights");
            PlanAnswer answer = asked.value("hours") == null
                    ? null
                    : new PlanAnswer(asked.whole("hours", 1, AnswerHours.MOST), nights);
            asked.nothingElse().understood();
            answers.write(id, answer);
            return Once.Answer.done(document(id));
        });
    }

    private void known(UUID plan) {
        if (plans.find(plan).isEmpty()) {
            throw new NotFoundException();
        }
    }

    private OfPlan document(UUID plan) {
        return answers.of(plan)
                .map(answer -> new OfPlan(plan, answer.hours(), answer.nights()))
                .orElse(new OfPlan(plan, null, true));
    }
}
