package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.Amendments;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/** A closed visit is corrected in the office, with a reason. */
@Path("/{slug}/visits/{id}/amendment")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AmendmentPages {

    private static final Pattern INSIDE = Pattern.compile("operations\\[\\d+](\\..*)?");

    public record Reading(String field, String words, String unit) {}

    public record Task(UUID id, String outcome, String reason, String machine, String words, List<Reading> readings) {}

    /** What may be taken back: a finding or a part. */
    public record Thing(String id, String words) {}

    /**
     * The visit as it stands.
     *
     * @param sentences what may be said of something that is found now
     * @param machines at which it may be found
     */
    public record View(
            UUID visit,
            UUID homeId,
            String home,
            List<Task> tasks,
            List<Thing> things,
            List<OrderChoices.Choice> sentences,
            List<OrderChoices.Choice> machines) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance amendment(Frame frame, View view, String made, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VisitLists visits;

    @Inject
    StopLines stops;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    OrderChoices choices;

    @Inject
    Amendments amendments;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        VisitLists.Row row = found(id);
        Map<String, String> known = new AmendmentForm(lines(row)).known();
        known.put("language", frames.locale().getLanguage());
        return page(row, UUID.randomUUID().toString(), Said.filled(known));
    }

    @POST
    public Response amend(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    VisitLists.Row row = found(id);
                    UUID made = typed.id("made");
                    String why = typed.text("why", 2000);
                    List<SentOperation> corrections = new AmendmentForm(lines(row)).read(typed, made, today.now());
                    typed.understood();
                    amendments.amend(made, id, why, corrections, current.person());
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                refusals -> page(
                        found(id),
                        String.valueOf(fields.getFirst("made")),
                        Said.again(
                                typed,
                                refusals.stream().map(AmendmentPages::above).toList(),
                                frames.locale())));
    }

    /** What a rule says of an operation stands above the form, which has no field of that name. */
    private static Refusal above(Refusal refusal) {
        return refusal.field() != null && INSIDE.matcher(refusal.field()).matches()
                ? Refusal.of(refusal.code(), refusal.facts())
                : refusal;
    }

    /** A closed visit; one that is open is not corrected but closed. */
    private VisitLists.Row found(UUID id) {
        return visits.one(id).filter(row -> "closed".equals(row.how())).orElseThrow(NotFoundException::new);
    }

    private StopLines.Lines lines(VisitLists.Row row) {
        return stops.of(
                row.id(), Objects.requireNonNullElse(row.technicianId(), current.person()), catalogue.catalogue());
    }

    private TemplateInstance page(VisitLists.Row row, String made, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        StopLines.Lines lines = lines(row);
        Locale locale = frame.locale();
        Catalogue trade = catalogue.catalogue();
        return Pages.amendment(
                frame,
                new View(
                        row.id(),
                        row.homeId(),
                        row.street() + ", " + row.city(),
                        lines.tasks().stream().map(task -> task(task, locale)).toList(),
                        lines.said().stream()
                                .filter(said -> said.kind().equals("finding")
                                        || said.kind().equals("part"))
                                .map(said -> thing(said, trade, locale))
                                .toList(),
                        trade.sentences().stream()
                                .map(one -> new OrderChoices.Choice(
                                        one.code(), one.wording().in(locale)))
                                .toList(),
                        choices.machines(row.homeId())),
                made,
                form);
    }

    private static Task task(DaySheet.TaskLine task, Locale locale) {
        return new Task(
                task.id(),
                "outcome." + task.id(),
                "reason." + task.id(),
                task.equipment() == null ? "" : task.equipment(),
                task.wording().in(locale),
                task.readings().stream()
                        .map(line -> new Reading(
                                AmendmentForm.field(task.id(), line.spec().code()),
                                line.spec().wording().in(locale),
                                Optional.ofNullable(line.spec().unit())
                                        .flatMap(UnitOfMeasure::find)
                                        .map(unit -> unit.symbol().in(locale))
                                        .orElse("")))
                        .toList());
    }

    private static Thing thing(DaySheet.Said said, Catalogue trade, Locale locale) {
        if (said.kind().equals("part")) {
            return new Thing(
                    said.id().toString(),
                    AmendmentForm.text(said, "quantity") + " × " + AmendmentForm.text(said, "part"));
        }
        Map<String, Object> body = said.body();
        String words = Optional.ofNullable(body.get("sentence"))
                .flatMap(code -> trade.findSentence(code.toString()))
                .map(Sentence::wording)
                .map(wording -> wording.in(locale))
                .orElse(AmendmentForm.text(said, "text"));
        return new Thing(said.id().toString(), words);
    }
}
