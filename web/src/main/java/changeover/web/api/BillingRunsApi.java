package changeover.web.api;

import changeover.billing.runs.BillingRun;
import changeover.billing.runs.BillingRuns;
import changeover.billing.runs.RunPreview;
import changeover.billing.runs.RunPreviews;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusals;
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
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Billing runs: foreseen, begun, watched and halted; the work itself goes on behind the API. */
@Path("/api/v1/{slug}/billing-runs")
@RolesAllowed({"owner", "office"})
public class BillingRunsApi {

    /** A run and how far it is. */
    public record RunDocument(
            UUID id,
            LocalDate day,
            String state,
            UUID startedBy,
            Instant startedAt,
            @Nullable Instant endedAt,
            int drafts,
            int issued,
            int joined,
            int refused,
            int papersToMake,
            List<Amount> totals) {}

    /** A run with what it left, and why. */
    public record WholeRun(RunDocument run, List<Left> left) {}

    public record Left(UUID invoice, String code, String refusal) {}

    /** The documents of a kind, with their sums. */
    public record OfKind(String kind, int drafts, List<Amount> totals) {}

    /** A document that would be issued, tax included; {@code odd} says why somebody should look at it. */
    public record Planned(
            UUID invoice, UUID customer, String name, String kind, String what, Amount amount, List<Odd> odd) {}

    /** @param usual before tax, where amounts are compared */
    public record Odd(String code, @Nullable Amount usual) {}

    public record Foreseen(
            LocalDate day,
            int drafts,
            List<Amount> totals,
            List<OfKind> kinds,
            List<Planned> documents,
            List<Planned> odd,
            List<Left> refused,
            List<UUID> withoutMail,
            int nothingToCharge) {}

    @Inject
    BillingRuns runs;

    @Inject
    RunPreviews previews;

    @Inject
    Today today;

    @Inject
    Tongue tongue;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<RunDocument> list() {
        return runs.recent().stream().map(BillingRunsApi::document).toList();
    }

    /**
     * What a run on the day would issue by kind and document, what of it is odd, what would stay a draft and why, and whose payers
     * have no e-mail address. Of the documents {@code count} come, at most 1000, after the first {@code skip}.
     */
    @GET
    @Path("preview")
    @Transactional
    public Foreseen preview(
            @Nullable @QueryParam("day") String day,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("100") int count) {
        Locale locale = tongue.locale();
        RunPreview preview = previews.on(day == null ? today.day() : AskedInQuery.day("day", day));
        return new Foreseen(
                preview.day(),
                preview.drafts(),
                preview.totals().stream().map(Amount::of).toList(),
                preview.kinds().stream()
                        .map(one -> new OfKind(
                                one.kind().code(),
                                one.drafts(),
                                one.totals().stream().map(Amount::of).toList()))
                        .toList(),
                preview.documents().stream()
                        .skip(Math.clamp(skip, 0, 1_000_000))
                        .limit(Math.clamp(count, 1, 1000))
                        .map(one -> planned(one, locale))
                        .toList(),
                preview.odd().stream().map(one -> planned(one, locale)).toList(),
                preview.refused().stream()
                        .map(odd -> new Left(odd.draft(), odd.why().code(), Refusals.sentence(odd.why(), locale)))
                        .toList(),
                preview.withoutMail().stream().map(one -> one.draft().id()).toList(),
                preview.nothing());
    }

    private static Planned planned(RunPreview.Planned one, Locale locale) {
        var draft = one.draft();
        return new Planned(
                draft.id(),
                draft.customerId(),
                draft.customer(),
                draft.kind().code(),
                draft.what().in(locale),
                Amount.of(one.amount()),
                draft.odd().stream()
                        .map(odd -> new Odd(odd.why().code(), odd.usual() == null ? null : Amount.of(odd.usual())))
                        .toList());
    }

    @GET
    @Path("{id}")
    @Transactional
    public WholeRun one(@PathParam("id") UUID id) {
        Locale locale = tongue.locale();
        return new WholeRun(
                document(runs.find(id).orElseThrow(NotFoundException::new)),
                runs.left(id).stream()
                        .map(left ->
                                new Left(left.draft(), left.code(), left.why().in(locale)))
                        .toList());
    }

    /** Begins a run; without a {@code day} it is today's. */
    @POST
    public Response start(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "billing-runs " + body, () -> {
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.dayOrNone("day");
            asked.nothingElse().understood();
            UUID id = runs.start(day == null ? today.day() : day);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/billing-runs/" + id,
                    document(runs.find(id).orElseThrow()));
        });
    }

    /** Ends a run after the batch in hand; what it issued stays issued. */
    @POST
    @Path("{id}/halt")
    public Response halt(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "halt " + id + body, () -> {
            var _ = runs.find(id).orElseThrow(NotFoundException::new);
            Asked.of(body, json).nothingElse().understood();
            runs.halt(id);
            return Once.Answer.done(document(runs.find(id).orElseThrow()));
        });
    }

    private static RunDocument document(BillingRun run) {
        return new RunDocument(
                run.id(),
                run.day(),
                run.state().code(),
                run.startedBy(),
                run.startedAt(),
                run.endedAt(),
                run.drafts(),
                run.issued(),
                run.joined(),
                run.refused(),
                run.papers(),
                run.totals().stream().map(Amount::of).toList());
    }
}
