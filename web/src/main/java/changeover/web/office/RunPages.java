package changeover.web.office;

import changeover.billing.runs.BillingRun;
import changeover.billing.runs.BillingRuns;
import changeover.billing.runs.Foreseeable.Kind;
import changeover.billing.runs.RunPreviews;
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
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A billing run: looked at first, begun, watched, halted if need be. */
@Path("/{slug}/money/runs")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RunPages {

    private static final MultivaluedMap<String, String> NOTHING_ASKED = new MultivaluedHashMap<>();

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

    public record Document(UUID id, String label, UUID customerId, String customer, String total) {}

    /** A page of what a run issued; {@code address} gives the same page again. */
    public record Issued(List<Document> rows, Leaf leaf, String address) {}

    /** A page of what a run left. */
    public record Left(List<Odd> rows, Leaf leaf) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance runs(Frame frame, @Nullable RunLook looked, List<Run> earlier, Said form);

        static native TemplateInstance run(Frame frame, Run run, Issued issued, Left left, Said form);

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
        @Nullable String of = typed.line("of", 20);
        try {
            typed.understood();
            @Nullable Kind kind = of == null ? null : Kind.of(of).orElseThrow(NotFoundException::new);
            return Response.ok(page(day, kind, asked.getQueryParameters(), List.of(), typed))
                    .build();
        } catch (Refused refused) {
            return desk.refuse(refused.refusals(), refusals -> page(null, null, NOTHING_ASKED, refusals, typed));
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
                refusals -> page(null, null, NOTHING_ASKED, refusals, typed));
    }

    @GET
    @Path("{id}")
    @Transactional
    public TemplateInstance run(@PathParam("id") UUID id, @Context UriInfo asked) {
        return page(id, asked.getQueryParameters(), Said.blank());
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
                        NOTHING_ASKED,
                        new Said(
                                java.util.Map.of(),
                                java.util.Map.of(),
                                refusals.stream()
                                        .map(one -> Refusals.sentence(one, frames.locale()))
                                        .toList())));
    }

    private TemplateInstance page(
            @Nullable LocalDate said,
            @Nullable Kind kind,
            MultivaluedMap<String, String> asked,
            List<Refusal> refusals,
            Typed typed) {
        Frame frame = frames.of(Tab.MONEY);
        LocalDate day = said == null ? frame.today() : said;
        List<Refusal> wrong = refusals;
        @Nullable RunLook looked = null;
        if (refusals.isEmpty()) {
            try {
                looked = RunLook.of(previews.on(day), kind, asked, frame);
            } catch (Refused refused) {
                wrong = refused.refusals();
            }
        }
        Said form = wrong.isEmpty()
                ? Said.filled(java.util.Map.of("day", day.toString()))
                : Said.again(typed, wrong, frame.locale());
        return Pages.runs(
                frame,
                looked,
                runs.recent().stream().map(run -> words(run, frame)).toList(),
                form);
    }

    private TemplateInstance page(UUID id, MultivaluedMap<String, String> asked, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        BillingRun run = runs.find(id).orElseThrow(NotFoundException::new);
        String address = frame.at("money/runs/") + id;
        Leaf issued = Leaf.of(address, asked, "page", run.issued());
        List<Document> documents = runs.issued(id, issued.skip(), Leaf.SIZE).stream()
                .map(one -> new Document(
                        one.id(),
                        one.label(),
                        one.customerId(),
                        one.customer(),
                        one.total().format(frame.locale())))
                .toList();
        Leaf stayed = Leaf.of(address, asked, "left", run.refused());
        List<Odd> left = runs.left(id, stayed.skip(), Leaf.SIZE).stream()
                .map(one -> new Odd(
                        one.draft(),
                        one.customer() == null ? "" : one.customer(),
                        one.why().in(frame.locale())))
                .toList();
        return Pages.run(
                frame,
                words(run, frame),
                new Issued(documents, issued, issued.here(address, asked, "page")),
                new Left(left, stayed),
                form);
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
                RunLook.together(run.totals(), frame));
    }
}
