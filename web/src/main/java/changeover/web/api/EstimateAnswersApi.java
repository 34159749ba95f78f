package changeover.web.api;

import changeover.billing.estimates.Answering;
import changeover.billing.estimates.AnswersPutRight;
import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateMoney;
import changeover.billing.estimates.EstimateWorks;
import changeover.billing.estimates.NewAnswer;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** What follows the offer of an estimate: its answer, the visit that does it, its deposit, a yes to more. */
@Path("/api/v1/{slug}/estimates/{id}")
@RolesAllowed({"owner", "office"})
public class EstimateAnswersApi {

    private static final int DAY_IN_MINUTES = 1440;

    @Inject
    EstimatesApi estimates;

    @Inject
    Answering answering;

    @Inject
    EstimateWorks works;

    @Inject
    EstimateMoney money;

    @Inject
    AskingForMore asking;

    @Inject
    AnswersPutRight putRight;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /**
     * A yes or a no that reached the business: {@code how} (accepted, refused), {@code by}, {@code channel} (call, site),
     * optionally {@code at} (now) and {@code words}. One by the customer's link is given there.
     */
    @POST
    @Path("answer")
    public Response answer(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "estimate answer " + id + body, () -> {
            var _ = estimates.found(id);
            Asked asked = Asked.of(body, json);
            boolean yes = asked.oneOf("how", Set.of("accepted", "refused")).equals("accepted");
            NewAnswer said = said(asked, yes, asked.line("words", 1000));
            asked.nothingElse().understood();
            var _ = answering.answer(id, said);
            return Once.Answer.done(estimates.document(id));
        });
    }

    /** The business takes it back before its answer: {@code by, why}. */
    @POST
    @Path("withdrawal")
    public Response withdraw(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return because(operation, "estimate withdrawal ", id, body, (by, why) -> answering.withdraw(id, by, why));
    }

    /** The accepted work is done in {@code visit}, or in a new one until {@code last} with {@code minutes} (60). */
    @POST
    @Path("visits")
    public Response visit(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "estimate visits " + id + body, () -> {
            var _ = estimates.found(id);
            Asked asked = Asked.of(body, json);
            UUID visit = asked.idOrNone("visit");
            LocalDate last = asked.dayOrNone("last");
            int minutes = asked.wholeOr("minutes", 5, DAY_IN_MINUTES, 60);
            if (visit == null && last == null) {
                asked.refuse(Refusal.of("typed.missing").at("last"));
            }
            asked.nothingElse().understood();
            if (visit != null) {
                works.bind(id, visit);
            } else if (last != null) {
                var _ = works.makeVisit(id, last, minutes);
            }
            return Once.Answer.made("/api/v1/" + slug + "/estimates/" + id, estimates.document(id));
        });
    }

    /** A yes to more: {@code amount}, the whole before taxes from now on, {@code by, channel, words}, optionally {@code at}. */
    @POST
    @Path("consents")
    public Response more(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "estimate consents " + id + body, () -> {
            var _ = estimates.found(id);
            Asked asked = Asked.of(body, json);
            Money whole = asked.money("amount", businesses.current().currency());
            NewAnswer said = said(asked, true, asked.text("words", 1000));
            asked.nothingElse().understood();
            works.more(id, whole, said);
            return Once.Answer.made("/api/v1/" + slug + "/estimates/" + id, estimates.document(id));
        });
    }

    /** Asks the customer for a yes to more on their own page: {@code amount}, the whole before taxes, {@code words}. */
    @POST
    @Path("questions")
    public Response ask(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "estimate questions " + id + body, () -> {
            var _ = estimates.found(id);
            Asked asked = Asked.of(body, json);
            Money whole = asked.money("amount", businesses.current().currency());
            String words = asked.text("words", 1000);
            asked.nothingElse().understood();
            var _ = asking.ask(id, whole, words);
            return Once.Answer.made("/api/v1/" + slug + "/estimates/" + id, estimates.document(id));
        });
    }

    /** An answer written on the wrong estimate is taken back while nothing hangs on it: {@code by, why}. */
    @POST
    @Path("answer-undoing")
    public Response undo(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return because(operation, "estimate answer undoing ", id, body, (by, why) -> putRight.takeBack(id, by, why));
    }

    /** Takes its deposit: {@code amount, way}, optionally {@code day} (today) and {@code reference}. */
    @POST
    @Path("deposits")
    public Response deposit(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "estimate deposits " + id + body, () -> {
            var _ = estimates.found(id);
            Asked asked = Asked.of(body, json);
            Money amount = asked.money("amount", businesses.current().currency());
            String way = asked.oneOf("way", Way.codes());
            LocalDate day = asked.dayOrNone("day");
            String reference = asked.line("reference", 140);
            asked.nothingElse().understood();
            UUID deposit = money.take(id, day == null ? today.day() : day, Way.of(way), amount, reference);
            return Once.Answer.made("/api/v1/" + slug + "/deposits", new Taken(deposit));
        });
    }

    /** @param deposit as the deposits say it */
    public record Taken(UUID deposit) {}

    /** What somebody does with an estimate for a reason: {@code by, why}. */
    private Response because(
            String operation, String what, UUID id, String body, BiFunction<String, String, Estimate> verb) {
        return once.answer(operation, what + id + body, () -> {
            var _ = estimates.found(id);
            Asked asked = Asked.of(body, json);
            String by = asked.text("by", 200);
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            var _ = verb.apply(by, why);
            return Once.Answer.done(estimates.document(id));
        });
    }

    private NewAnswer said(Asked asked, boolean yes, @Nullable String words) {
        String channel = asked.oneOf("channel", ConsentChannel.writtenDown());
        return new NewAnswer(
                yes, asked.text("by", 200), at(asked), ConsentChannel.of(channel.isEmpty() ? "call" : channel), words);
    }

    private Instant at(Asked asked) {
        return Objects.requireNonNullElseGet(AskedInstant.of(asked, "at"), today::now);
    }
}
