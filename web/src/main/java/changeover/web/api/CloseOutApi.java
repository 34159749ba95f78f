package changeover.web.api;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.closeout.OperationAnswer;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Once;
import changeover.web.session.OwnVisits;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Close-out over the API: operations as devices send them, and a whole closure in one request. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office", "technician"})
public class CloseOutApi {

    /** What became of one operation. */
    public record AnswerDocument(UUID id, UUID visit, String state, List<String> refusals) {}

    /** A closed visit as it stands after the request. */
    public record ClosureDocument(UUID visit, boolean closed, List<AnswerDocument> operations) {}

    @Inject
    CloseOut closeOut;

    @Inject
    Closures closures;

    @Inject
    OwnVisits visits;

    @Inject
    CurrentTenant current;

    @Inject
    Tongue tongue;

    @Inject
    Once once;

    @Inject
    Clock clock;

    @Inject
    ObjectMapper json;

    /**
     * {@code operations}: a list of {@code id, visit, device, sequence, at, basedOn, kind, body}. Each is answered for
     * itself; the same id again gives the same answer.
     */
    @POST
    @Path("operations")
    public Response take(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "operations " + body, () -> {
            Asked asked = Asked.of(body, json);
            Map<UUID, List<SentOperation>> byVisit = new LinkedHashMap<>();
            for (Asked one : asked.each("operations")) {
                UUID visit = one.id("visit");
                byVisit.computeIfAbsent(visit, id -> new ArrayList<>()).add(SentJson.read(one));
            }
            asked.nothingElse().understood();
            List<AnswerDocument> answers = new ArrayList<>();
            byVisit.forEach((visit, sent) -> {
                var _ = visits.found(visit);
                closeOut.apply(visit, sent, current.person()).forEach(answer -> answers.add(document(visit, answer)));
            });
            return Once.Answer.done(Map.of("answers", answers));
        });
    }

    /**
     * A whole visit closed in one request, all or nothing: {@code tasks} (task, outcome, reason, cause), {@code others} (an
     * outcome for every task not named), {@code readings}, {@code findings}, {@code parts}, {@code minutes},
     * {@code extraMinutes}, {@code arrivedAt} and {@code leftAt}, both, where it is typed later from paper, {@code receivedBy}
     * or {@code nobodyWhy}, {@code note}; or {@code operations} as devices send them.
     */
    @POST
    @Path("visits/{id}/closure")
    public Response close(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "closure " + id + body, () -> {
            VisitLists.Row visit = visits.found(id);
            Asked asked = Asked.of(body, json);
            List<SentOperation> sent = asked.value("operations") == null
                    ? new ClosureJson(UUID.fromString(operation), clock.instant(), asked).read(tasks(id))
                    : asked.each("operations").stream().map(SentJson::read).toList();
            asked.nothingElse().understood();
            List<AnswerDocument> answers = closeOut.applyWhole(visit.id(), sent, current.person()).stream()
                    .map(answer -> document(id, answer))
                    .toList();
            return Once.Answer.done(new ClosureDocument(id, closures.of(id).isPresent(), answers));
        });
    }

    @Inject
    changeover.scheduling.visits.Visits checklists;

    private List<UUID> tasks(UUID visit) {
        return checklists.tasksOf(visit).stream().map(task -> task.id()).toList();
    }

    private AnswerDocument document(UUID visit, OperationAnswer answer) {
        return new AnswerDocument(
                answer.id(),
                visit,
                answer.state().code(),
                answer.refusals().stream().map(this::sentence).toList());
    }

    private String sentence(Refusal refusal) {
        return Refusals.sentence(refusal, tongue.locale());
    }
}
