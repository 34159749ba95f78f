package changeover.web.office;

import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.ReportFacts;
import changeover.scheduling.closeout.Reports;
import changeover.scheduling.reviews.HeldClosure;
import changeover.scheduling.reviews.Reviews;
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
import java.util.List;
import java.util.Locale;
import java.util.UUID;

/** Closures that wait until somebody looks them over: the list, and one with what it says. */
@Path("/{slug}/reviews")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ReviewPages {

    private static final int PAGE = 50;

    /** @param level code of it */
    public record Found(String level, String machine, String words, String language) {}

    public record Task(String machine, String words, String outcome, String reason) {}

    /** @param off whether it is to be acted on */
    public record Measured(String machine, String words, String value, boolean off) {}

    /** What the closure says. */
    public record Sheet(List<Task> tasks, List<Measured> readings, List<Found> findings) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance reviews(
                Frame frame, List<ReviewRows.Line> waiting, List<ReviewRows.Line> over, int from, boolean more);

        static native TemplateInstance review(Frame frame, ReviewRows.Line held, Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Reviews reviews;

    @Inject
    Reports reports;

    @Inject
    ReviewRows rows;

    @Inject
    CurrentTenant current;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("from") @DefaultValue("0") int from) {
        Frame frame = frames.of(Tab.TODAY);
        int start = Math.clamp(from, 0, 1_000_000);
        List<ReviewRows.Line> over = ReviewRows.lines(reviews.over(start, PAGE + 1), frame);
        return Pages.reviews(
                frame,
                start == 0 ? rows.waiting(frame) : List.of(),
                over.stream().limit(PAGE).toList(),
                start,
                over.size() > PAGE);
    }

    @GET
    @Path("{hold}")
    @Transactional
    public TemplateInstance one(@PathParam("hold") UUID id) {
        return page(found(id), Said.blank());
    }

    /** Yes: report and draft may leave. */
    @POST
    @Path("{hold}/approval")
    public Response approve(
            @PathParam("slug") String slug, @PathParam("hold") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    int version = typed.whole("version", 1, Integer.MAX_VALUE);
                    String words = typed.line("words", 2000);
                    typed.understood();
                    reviews.approve(id, version, words, current.person());
                    return SaidOnce.at("/" + slug + "/reviews", "review-said-yes");
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private HeldClosure found(UUID id) {
        return reviews.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(HeldClosure held, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.review(
                frame, ReviewRows.line(held, frame), sheet(reports.of(held.visitId()), frame.locale()), form);
    }

    private static Sheet sheet(ReportFacts facts, Locale locale) {
        return new Sheet(
                facts.tasks().stream()
                        .map(task -> new Task(
                                task.equipment() == null ? "" : task.equipment(),
                                task.wording().in(locale),
                                task.outcome().code(),
                                task.reason() == null ? "" : task.reason()))
                        .toList(),
                facts.readings().stream()
                        .map(reading -> new Measured(
                                reading.equipment() == null ? "" : reading.equipment(),
                                reading.wording().in(locale),
                                value(reading, locale),
                                reading.actOn()))
                        .toList(),
                facts.findings().stream()
                        .map(found -> new Found(
                                found.level().code(),
                                found.equipment() == null ? "" : found.equipment(),
                                found.in(locale.getLanguage()),
                                found.language() == null ? locale.getLanguage() : found.language()))
                        .toList());
    }

    /** As it was typed, with its unit's sign. */
    static String value(ReportFacts.ReadingFact reading, Locale locale) {
        String unit = reading.enteredUnit();
        return unit == null
                ? reading.entered()
                : reading.entered() + "\u00a0"
                        + UnitOfMeasure.find(unit)
                                .map(one -> one.symbol().in(locale))
                                .orElse(unit);
    }
}
