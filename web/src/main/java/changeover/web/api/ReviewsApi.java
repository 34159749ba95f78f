package changeover.web.api;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import changeover.scheduling.reviews.HeldClosure;
import changeover.scheduling.reviews.KnownRule;
import changeover.scheduling.reviews.ReviewKind;
import changeover.scheduling.reviews.ReviewRule;
import changeover.scheduling.reviews.ReviewRules;
import changeover.scheduling.reviews.Reviews;
import changeover.scheduling.reviews.Spread;
import changeover.scheduling.reviews.Spreads;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Closures that wait until somebody looks them over, and the rules by which they do. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class ReviewsApi {

    private static final int PAGE = 100;
    private static final Set<String> LEVELS = Set.of("recommended", "urgent", "do_not_use");

    /** @param gravest level of the gravest finding; {@code looked} is null while it waits */
    public record HeldDocument(
            UUID id,
            UUID visit,
            UUID home,
            UUID technician,
            LocalDate day,
            int version,
            int minutes,
            int minutesPlanned,
            @Nullable String gravest,
            String why,
            @Nullable Looked looked) {}

    public record Looked(String by, LocalDate day, @Nullable String words) {}

    /** @param ended null while it stands */
    public record RuleDocument(
            UUID id,
            String kind,
            @Nullable UUID person,
            @Nullable String level,
            @Nullable Integer first,
            LocalDate from,
            @Nullable LocalDate ended) {}

    /** @param times by kind of visit; {@code readings} by code and kind of machine, in their base unit */
    public record SpreadDocument(List<Spread> times, List<Spread> readings) {}

    @Inject
    Reviews reviews;

    @Inject
    Spreads spreads;

    @Inject
    ReviewRules rules;

    @Inject
    CurrentTenant current;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param state waiting, or over: the newest first from {@code from} on, a hundred at a time */
    @GET
    @Path("reviews")
    @Transactional
    public List<HeldDocument> list(
            @QueryParam("state") @DefaultValue("waiting") String state,
            @QueryParam("from") @DefaultValue("0") int from) {
        List<HeldClosure> found = switch (state) {
            case "waiting" -> reviews.waiting();
            case "over" -> reviews.over(Math.clamp(from, 0, 1_000_000), PAGE);
            default ->
                throw Refusal.of("typed.one-of", Map.of("words", "over, waiting"))
                        .at("state")
                        .thrown();
        };
        return found.stream().map(ReviewsApi::document).toList();
    }

    @GET
    @Path("reviews/{hold}")
    @Transactional
    public HeldDocument one(@PathParam("hold") UUID id) {
        return document(found(id));
    }

    /** Yes: {@code version} that was looked at, optionally {@code words}. */
    @POST
    @Path("reviews/{hold}/approval")
    public Response approve(@PathParam("hold") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "review approval " + id + body, () -> {
            var _ = found(id);
            Asked asked = Asked.of(body, json);
            int version = asked.whole("version", 1, Integer.MAX_VALUE);
            String words = asked.line("words", 2000);
            asked.nothingElse().understood();
            reviews.approve(id, version, words, current.person());
            return Once.Answer.done(document(found(id)));
        });
    }

    /**
     * What each one measures, and needs of time in per cent of the minutes planned, beside the middle of the others, from {@code from}
     * until {@code last}; names by the alphabet.
     */
    @GET
    @Path("reviews/spread")
    @Transactional
    public SpreadDocument spread(@QueryParam("from") String from, @QueryParam("last") String last) {
        LocalDate first = AskedInQuery.day("from", String.valueOf(from));
        LocalDate until = AskedInQuery.day("last", String.valueOf(last));
        if (until.isBefore(first)) {
            throw Refusal.of("visits.days").at("last").thrown();
        }
        Window days = Window.ofDays(first, until);
        return new SpreadDocument(spreads.times(days), spreads.readings(days));
    }

    @GET
    @Path("review-rules")
    @Transactional
    public List<RuleDocument> allRules() {
        return rules.all().stream().map(ReviewsApi::document).toList();
    }

    /** {@code kind} (technician, severity, first, beside), {@code from}, and by kind {@code person, level, first}. */
    @POST
    @Path("review-rules")
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "review rules " + body, () -> {
            Asked asked = Asked.of(body, json);
            String kind = asked.oneOf("kind", ReviewKind.codes());
            UUID person = asked.idOrNone("person");
            @Nullable String level = asked.value("level") == null ? null : asked.oneOf("level", LEVELS);
            int first = asked.wholeOr("first", 1, ReviewRule.MOST, 0);
            LocalDate from = asked.day("from");
            asked.nothingElse().understood();
            UUID id = Once.named(operation);
            rules.add(
                    id,
                    new ReviewRule(
                            ReviewKind.of(kind),
                            person,
                            level == null ? null : FindingLevel.ofCode(level),
                            first,
                            from));
            return Once.Answer.made(
                    "/api/v1/" + slug + "/review-rules", document(rules.find(id).orElseThrow()));
        });
    }

    /** From today on the rule holds nothing more. */
    @POST
    @Path("review-rules/{rule}/ending")
    @RolesAllowed("owner")
    public Response end(@PathParam("rule") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "review rule ending " + id + body, () -> {
            var _ = rules.find(id).orElseThrow(NotFoundException::new);
            Asked.of(body, json).nothingElse().understood();
            rules.end(id);
            return Once.Answer.done(document(rules.find(id).orElseThrow()));
        });
    }

    private HeldClosure found(UUID id) {
        return reviews.find(id).orElseThrow(NotFoundException::new);
    }

    private static HeldDocument document(HeldClosure held) {
        HeldClosure.Answer answer = held.answer();
        return new HeldDocument(
                held.id(),
                held.visitId(),
                held.homeId(),
                held.technicianId(),
                held.day(),
                held.version(),
                held.minutes(),
                held.minutesPlanned(),
                held.gravest(),
                held.why().code(),
                answer == null ? null : new Looked(answer.person(), answer.day(), answer.words()));
    }

    private static RuleDocument document(KnownRule one) {
        FindingLevel level = one.rule().level();
        return new RuleDocument(
                one.id(),
                one.rule().kind().code(),
                one.rule().person(),
                level == null ? null : level.code(),
                one.rule().kind() == ReviewKind.FIRST ? one.rule().first() : null,
                one.rule().from(),
                one.ended());
    }
}
