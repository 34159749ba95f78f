package changeover.web.api;

import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Became;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.CallLists;
import changeover.scheduling.calls.CallOutcome;
import changeover.scheduling.calls.CallVersions;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.calls.NewCallers;
import changeover.scheduling.calls.NewCallers.NewCaller;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Calls: listed by risk and promise, taken life first, and what each became. */
@Path("/api/v1/{slug}/calls")
@RolesAllowed({"owner", "office"})
public class CallsApi {

    private static final int DAY_IN_MINUTES = 1440;

    private static final Set<String> OUTCOMES =
            Arrays.stream(Became.values()).map(Became::code).collect(Collectors.toSet());

    @Inject
    Calls calls;

    @Inject
    CallVersions versions;

    @Inject
    CallLists lists;

    @Inject
    NewCallers newcomers;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /**
     * @param state waiting, in the order in which they are answered, or over, the newest first
     * @param home every call about one home instead, the newest first
     */
    @GET
    @Transactional
    public List<CallDocument.Line> list(
            @Nullable @QueryParam("state") String state,
            @Nullable @QueryParam("home") UUID home,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("200") int count) {
        int from = Math.clamp(skip, 0, 1_000_000);
        int most = Math.clamp(count, 1, 500);
        Instant now = today.now();
        if (home != null) {
            var _ = homes.get(home).orElseThrow(NotFoundException::new);
            return lists.ofHome(home, from + most).stream()
                    .skip(from)
                    .map(row -> CallDocument.line(row, now))
                    .toList();
        }
        List<CallLists.Row> rows = "over".equals(AskedInQuery.oneOf("state", state, Set.of("waiting", "over")))
                ? lists.over(from, most)
                : lists.waiting().stream().skip(from).limit(most).toList();
        return rows.stream().map(row -> CallDocument.line(row, now)).toList();
    }

    @GET
    @Path("{call}")
    @Transactional
    public CallDocument one(@PathParam("call") UUID id) {
        return document(found(id));
    }

    /**
     * A call: {@code caller, trouble, words}, and {@code home}, or where it is not here yet {@code street, city} and
     * optionally {@code postal, language}. Optionally {@code phone, rangAt} (now), {@code heat}, what is at risk each as yes
     * or no ({@code alarm, gas, symptoms, water, age, infant}), {@code promisedBy} (the business's answer time),
     * {@code told, toldWords}. With an alarm, gas or symptoms {@code toldToLeave} must be true.
     */
    @POST
    public Response take(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "calls " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID home = asked.idOrNone("home");
            var read = new CallJson(asked, today.now(), businesses.current().currency());
            Call.Facts facts = read.facts(home == null ? new UUID(0, 0) : home, AskedInstant.of(asked, "rangAt"));
            NewCaller newcomer = newcomer(asked, home, facts);
            asked.nothingElse();
            read.judge(facts);
            if (home != null) {
                var _ = homes.get(home).orElseThrow(NotFoundException::new);
            }
            asked.understood();
            Call.Facts where = home == null ? facts.at(newcomers.enter(newcomer)) : facts;
            Call call = calls.take(Once.named(operation), where, today.now());
            return Once.Answer.made("/api/v1/" + slug + "/calls/" + call.id(), document(call));
        });
    }

    /** What it became: {@code how, why}; for a visit optionally {@code minutes} (60) and {@code last} (the promised day). */
    @POST
    @Path("{call}/outcome")
    public Response answer(@PathParam("call") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "call outcome " + id + body, () -> {
            Call call = found(id);
            Asked asked = Asked.of(body, json);
            String how = asked.oneOf("how", OUTCOMES);
            String why = asked.text("why", 1000);
            int minutes = asked.wholeOr("minutes", 5, DAY_IN_MINUTES, 60);
            LocalDate last = asked.dayOrNone("last");
            asked.nothingElse().understood();
            Instant now = today.now();
            var _ = switch (Became.ofCode(how)) {
                case VISIT -> calls.visit(id, minutes, last, why, now);
                case ADVICE -> calls.advice(id, why, now);
                case NOTHING -> calls.nothing(id, why, now);
            };
            return Once.Answer.done(document(call));
        });
    }

    /** Asked for also where a home is named, so that one who sends both is understood; the home then decides. */
    private NewCaller newcomer(Asked asked, @Nullable UUID home, Call.Facts facts) {
        String street = home == null ? asked.text("street", 200) : asked.line("street", 200);
        String city = home == null ? asked.text("city", 100) : asked.line("city", 100);
        String language = asked.value("language") == null
                ? businesses.current().language()
                : asked.oneOf("language", Set.of("en", "fr"));
        return new NewCaller(
                facts.caller(),
                facts.phone(),
                language,
                street == null ? "" : street,
                city == null ? "" : city,
                asked.line("postal", 20));
    }

    private Call found(UUID id) {
        return calls.find(id).orElseThrow(NotFoundException::new);
    }

    private CallDocument document(Call call) {
        CallOutcome outcome = calls.outcome(call.id()).orElse(null);
        return CallDocument.of(call, versions.newest(call), outcome);
    }
}
