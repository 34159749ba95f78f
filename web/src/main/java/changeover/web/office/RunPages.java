package changeover.web.office;

import changeover.billing.runs.BillingRun;
import changeover.billing.runs.BillingRuns;
import changeover.billing.runs.RunPreview;
import changeover.billing.runs.RunPreviews;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.contracts.words.Refused;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A billing run: looked at first, begun, watched, halted if need be. */
@Path("/{slug}/money/runs")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RunPages {

    private static final int SHOWN = 200;

    /** A run in words: its day, who began it, and how it stands. */
    public record Run(
            UUID id,
            String day,
            String by,
            String state,
            boolean running,
            int handled,
            int drafts,
            int issued,
            int joined,
            int refused,
            int papers,
            String totals) {}

    public record Odd(UUID draft, String customer, String why) {}

    /** What the run would do; none when the day is refused. */
    public record Looked(int drafts, String totals, List<Odd> stay, int staying, List<Odd> letters, int lettersInAll) {}

    public record Document(UUID id, String label, UUID customerId, String customer, String total) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance runs(Frame frame, @Nullable Looked looked, List<Run> earlier, Said form);

        static native TemplateInstance run(Frame frame, Run run, List<Document> documents, List<Odd> left, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    BillingRuns runs;

    @Inject
    RunPreviews previews;

    @Inject
    People people;

    @GET
    @Transactional
    public Response look(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate day = typed.dayOrNone("day");
        try {
            typed.understood();
            return Response.ok(page(day, List.of(), typed)).build();
        } catch (Refused refused) {
            return desk.refuse(refused.refusals(), refusals -> page(null, refusals, typed));
        }
    }

    @POST
    public Response start(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate day = typed.day("day");
                    typed.understood();
                    return "/" + slug + "/money/runs/" + runs.start(day);
                },
                refusals -> page(null, refusals, typed));
    }

    @GET
    @Path("{id}")
    @Transactional
    public TemplateInstance run(@PathParam("id") UUID id) {
        return page(id, Said.blank());
    }

    @POST
    @Path("{id}/halt")
    public Response halt(@PathParam("slug") String slug, @PathParam("id") UUID id) {
        return desk.answer(
                () -> {
                    var _ = runs.find(id).orElseThrow(NotFoundException::new);
                    runs.halt(id);
                    return SaidOnce.at("/" + slug + "/money/runs/" + id, "run-halted");
                },
                refusals -> page(
                        id,
                        new Said(
                                java.util.Map.of(),
                                java.util.Map.of(),
                                refusals.stream()
                                        .map(one -> Refusals.sentence(one, frames.locale()))
                                        .toList())));
    }

    private TemplateInstance page(@Nullable LocalDate asked, List<Refusal> refusals, Typed typed) {
        Frame frame = frames.of(Tab.MONEY);
        LocalDate day = asked == null ? frame.today() : asked;
        List<Refusal> said = refusals;
        @Nullable Looked looked = null;
        if (refusals.isEmpty()) {
            try {
                looked = looked(previews.on(day), frame.locale());
            } catch (Refused refused) {
                said = refused.refusals();
            }
        }
        Said form = said.isEmpty()
                ? Said.filled(java.util.Map.of("day", day.toString()))
                : Said.again(typed, said, frame.locale());
        return Pages.runs(
                frame,
                looked,
                runs.recent().stream().map(run -> words(run, frame)).toList(),
                form);
    }

    private static Looked looked(RunPreview preview, Locale locale) {
        return new Looked(
                preview.drafts(),
                together(preview.totals(), locale),
                some(preview.refused(), locale),
                preview.refused().size(),
                some(preview.withoutMail(), locale),
                preview.withoutMail().size());
    }

    private static List<Odd> some(List<RunPreview.Odd> odd, Locale locale) {
        return odd.stream().limit(SHOWN / 4).map(one -> odd(one, locale)).toList();
    }

    private static Odd odd(RunPreview.Odd odd, Locale locale) {
        return new Odd(odd.draft(), odd.customer(), odd.why() == null ? "" : Refusals.sentence(odd.why(), locale));
    }

    private static String together(List<Money> totals, Locale locale) {
        return totals.stream().map(one -> one.format(locale)).collect(Collectors.joining("; "));
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        BillingRun run = runs.find(id).orElseThrow(NotFoundException::new);
        List<Document> documents = runs.issued(id, 0, SHOWN).stream()
                .map(one -> new Document(
                        one.id(),
                        one.label(),
                        one.customerId(),
                        one.customer(),
                        one.total().format(frame.locale())))
                .toList();
        List<Odd> left = runs.left(id).stream()
                .map(one -> new Odd(
                        one.draft(),
                        one.customer() == null ? "" : one.customer(),
                        one.why().in(frame.locale())))
                .toList();
        return Pages.run(frame, words(run, frame), documents, left, form);
    }

    private Run words(BillingRun run, Frame frame) {
        return new Run(
                run.id(),
                frame.inWords(run.day()),
                people.of(run.startedBy()).map(Membership::name).orElse(""),
                run.state().code(),
                run.running(),
                run.handled(),
                run.drafts(),
                run.issued(),
                run.joined(),
                run.refused(),
                run.papers(),
                together(run.totals(), frame.locale()));
    }
}
