package changeover.web.api;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refusal;
import changeover.scheduling.calls.OnCallRound;
import changeover.scheduling.calls.OnCallRounds;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** On call in turns, as from the page. */
@Path("/api/v1/{slug}/on-call-rounds")
@RolesAllowed({"owner", "office"})
public class OnCallRoundsApi {

    private static final int MOST = 50;

    /** @param person null on days that nobody of the round could take */
    public record TurnDocument(@Nullable UUID person, LocalDate first, LocalDate last) {}

    @Inject
    OnCallRounds rounds;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Writes turns down: {@code order} (ids, who follows whom), {@code span} (week, day), {@code from}, {@code last}. */
    @POST
    public Response lay(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "on-call rounds " + body, () -> {
            Asked asked = Asked.of(body, json);
            List<UUID> order = order(asked);
            OnCallRound.Span span = asked.oneOf("span", Set.of("week", "day")).equals("day")
                    ? OnCallRound.Span.DAY
                    : OnCallRound.Span.WEEK;
            LocalDate from = asked.day("from");
            LocalDate last = asked.day("last");
            if (last.isBefore(from)) {
                asked.refuse(Refusal.of("visit.last-before-first").at("last"));
            } else if (last.isAfter(from.plusDays(OnCallRound.LONGEST))) {
                asked.refuse(Refusal.of("on-call.round-too-long").at("last"));
            }
            asked.nothingElse().understood();
            OnCallRound.Laid laid = rounds.lay(new OnCallRound(order, span, Window.ofDays(from, last)));
            List<TurnDocument> turns = new ArrayList<>();
            laid.turns()
                    .forEach(turn -> turns.add(new TurnDocument(
                            turn.person(), turn.days().from(), turn.days().last())));
            laid.open().forEach(days -> turns.add(new TurnDocument(null, days.from(), days.last())));
            return Once.Answer.done(turns);
        });
    }

    private static List<UUID> order(Asked asked) {
        List<UUID> order = AskedTexts.ids(asked, "order");
        if (order.isEmpty()) {
            asked.refuse(Refusal.of("on-call.round-of-nobody").at("order"));
        } else if (order.size() > MOST) {
            asked.refuse(Refusal.of("on-call.round-of-too-many", Map.of("most", MOST))
                    .at("order"));
        }
        return order;
    }
}
