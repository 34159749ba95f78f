package changeover.web.office;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Became;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.CallOutcome;
import changeover.scheduling.calls.CallVersion;
import changeover.scheduling.calls.CallVersions;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.calls.EmergencyNumber;
import changeover.scheduling.calls.Urgency;
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
import jakarta.ws.rs.DefaultValue;
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
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The calls that wait, those that are over, and one call until it becomes something. */
@Path("/{slug}/calls")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CallPages {

    static final int PAGE = 50;

    private static final int DAY_IN_MINUTES = 1440;
    private static final Set<String> OUTCOMES =
            Arrays.stream(Became.values()).map(Became::code).collect(Collectors.toUnmodifiableSet());

    /**
     * One call in words.
     *
     * @param number the emergency number where one is known
     * @param became empty while nobody has answered it
     */
    public record View(
            UUID id,
            UUID homeId,
            String home,
            String caller,
            String phone,
            String dial,
            String rang,
            String trouble,
            String words,
            String heat,
            String risks,
            boolean life,
            String number,
            String urgency,
            String promised,
            boolean late,
            @Nullable UUID agreementId,
            String told,
            String toldWords,
            String became,
            String why,
            String answered,
            @Nullable UUID visitId) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance calls(
                Frame frame, List<CallRows.Line> waiting, List<CallRows.Line> over, int from, boolean more);

        static native TemplateInstance call(
                Frame frame,
                View view,
                List<EstimateRowsInWords.Line> estimates,
                List<OrderRows.Line> orders,
                List<CallVersionRows.Line> versions,
                Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CallRows rows;

    @Inject
    EstimateRowsInWords estimates;

    @Inject
    OrderRows orders;

    @Inject
    CallVersionRows earlier;

    @Inject
    CallVersions versions;

    @Inject
    Calls calls;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("from") @DefaultValue("0") int from) {
        Frame frame = frames.of(Tab.TODAY);
        int start = Math.clamp(from, 0, 1_000_000);
        List<CallRows.Line> over = rows.over(frame, start, PAGE + 1);
        return Pages.calls(
                frame,
                start == 0 ? rows.waiting(frame) : List.of(),
                over.stream().limit(PAGE).toList(),
                start,
                over.size() > PAGE);
    }

    @GET
    @Path("{call}")
    @Transactional
    public TemplateInstance one(@PathParam("call") UUID id) {
        return page(found(id), Said.blank());
    }

    /** What it became, and why. */
    @POST
    @Path("{call}/outcome")
    public Response answer(
            @PathParam("slug") String slug, @PathParam("call") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    Became how = Became.ofCode(typed.oneOf("how", OUTCOMES));
                    String why = typed.text("why", 1000);
                    int minutes = how == Became.VISIT ? typed.whole("minutes", 5, DAY_IN_MINUTES) : 0;
                    LocalDate last = how == Became.VISIT ? typed.day("last") : null;
                    typed.understood();
                    Instant now = today.now();
                    return switch (how) {
                        case VISIT -> {
                            CallOutcome visit = calls.visit(id, minutes, last, why, now);
                            yield SaidOnce.at(
                                    "/" + slug + "/visits/" + visit.visitId().orElseThrow(), "call-visit");
                        }
                        case ADVICE -> over(slug, calls.advice(id, why, now));
                        case NOTHING -> over(slug, calls.nothing(id, why, now));
                    };
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private static String over(String slug, CallOutcome outcome) {
        return SaidOnce.at("/" + slug + "/calls/" + outcome.callId(), "kept");
    }

    private Call found(UUID id) {
        return calls.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Call call, Said typed) {
        Frame frame = frames.of(Tab.TODAY);
        List<CallVersion> all = versions.all(call);
        Call.Facts facts = all.getLast().facts();
        Instant promised = facts.promisedBy() == null ? call.promisedBy() : facts.promisedBy();
        CallOutcome outcome = calls.outcome(call.id()).orElse(null);
        List<UUID> visit =
                outcome == null ? List.of() : outcome.visitId().stream().toList();
        return Pages.call(
                frame,
                view(call, facts, promised, outcome, frame),
                estimates.ofCall(frame, call.id()),
                orders.ofVisits(frame, visit),
                earlier.of(all, frame),
                typed.over(toAnswer(promised)));
    }

    private Map<String, String> toAnswer(Instant promised) {
        LocalDate day = LocalDate.ofInstant(promised, businesses.current().zone());
        String last = (day.isBefore(today.day()) ? today.day() : day).toString();
        return Map.of("how", "visit", "minutes", "60", "last", last);
    }

    private View view(Call call, Call.Facts facts, Instant promised, @Nullable CallOutcome outcome, Frame frame) {
        Home home = homes.get(call.homeId()).orElseThrow(NotFoundException::new);
        ZoneId zone = businesses.current().zone();
        String phone = facts.phone() == null ? "" : facts.phone();
        return new View(
                call.id(),
                home.id(),
                home.line(),
                facts.caller(),
                phone,
                CallRows.dial(phone),
                CallRows.inWords(facts.rangAt(), frame, zone),
                facts.trouble().wording().in(frame.locale()),
                facts.words(),
                facts.heat().wording().in(frame.locale()),
                CallRows.risks(facts.risks(), frame),
                facts.urgency() == Urgency.LIFE,
                EmergencyNumber.in(businesses.current().country()).orElse(""),
                facts.urgency().wording().in(frame.locale()),
                CallRows.inWords(promised, frame, zone),
                outcome == null && promised.isBefore(today.now()),
                call.agreementId().orElse(null),
                facts.told() == null ? "" : facts.told().format(frame.locale()),
                facts.toldWords() == null ? "" : facts.toldWords(),
                outcome == null ? "" : outcome.how().wording().in(frame.locale()),
                outcome == null ? "" : outcome.why(),
                outcome == null ? "" : CallRows.inWords(outcome.at(), frame, zone),
                outcome == null ? null : outcome.visitId().orElse(null));
    }
}
