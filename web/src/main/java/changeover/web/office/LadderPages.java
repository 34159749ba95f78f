package changeover.web.office;

import changeover.billing.fees.FeeKind;
import changeover.billing.reminders.Ladders;
import changeover.billing.reminders.Step;
import changeover.billing.reminders.Tone;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
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
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The ladder of reminders: how they go out, and each step's days, tone, words and fee. The owner sets it. */
@Path("/{slug}/money/reminders/ladder")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class LadderPages {

    private static final int LONGEST_LETTER = 4000;

    public record Row(int days, String tone, String subject, boolean fee) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance ladder(Frame frame, List<Row> steps, Said form);

        static native TemplateInstance ladderstep(Frame frame, List<FeeCautions.Caution> cautions, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Ladders ladders;

    @Inject
    FeeCautions cautions;

    @GET
    @Transactional
    public TemplateInstance ladder() {
        return page(Said.filled(Map.of("how", ladders.how().code())));
    }

    @POST
    @RolesAllowed("owner")
    public Response go(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String how = typed.oneOf("how", Set.of("never", "list", "daily"));
                    typed.understood();
                    ladders.go(Ladders.How.valueOf(how.toUpperCase(Locale.ROOT)));
                    return SaidOnce.at("/" + slug + "/money/reminders/ladder", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    /** The usual steps, where there is none yet. */
    @POST
    @Path("usual")
    @RolesAllowed("owner")
    public Response begin(@PathParam("slug") String slug) {
        return desk.answer(
                () -> {
                    if (ladders.ladder().steps().isEmpty()) {
                        Step.usual().forEach(ladders::keep);
                    }
                    return SaidOnce.at("/" + slug + "/money/reminders/ladder", "kept");
                },
                refusals -> ladder());
    }

    @GET
    @Path("step")
    @Transactional
    public TemplateInstance step(@QueryParam("days") @Nullable String days) {
        Map<String, String> known = new HashMap<>(Map.of("tone", "friendly"));
        ladders.ladder().steps().stream()
                .filter(step -> String.valueOf(step.daysLate()).equals(days))
                .findFirst()
                .ifPresent(step -> known.putAll(fields(step)));
        return step(Said.filled(known));
    }

    @POST
    @Path("step")
    @RolesAllowed("owner")
    public Response keep(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Step step = new Step(
                            typed.whole("days", 1, 365),
                            Tone.of(typed.oneOf("tone", Set.of("friendly", "firm", "last")))
                                    .orElseThrow(),
                            new Wording(typed.text("subjectEn", 140), typed.text("subjectFr", 140)),
                            new Wording(typed.text("bodyEn", LONGEST_LETTER), typed.text("bodyFr", LONGEST_LETTER)),
                            typed.ticked("fee"));
                    typed.understood();
                    ladders.keep(step);
                    return SaidOnce.at("/" + slug + "/money/reminders/ladder", "kept");
                },
                refusals -> step(Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("step/withdrawal")
    @RolesAllowed("owner")
    public Response takeOff(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    int days = typed.whole("days", 1, 365);
                    typed.understood();
                    if (!ladders.takeOff(days)) {
                        throw Refusal.of("reminder.no-step").thrown();
                    }
                    return SaidOnce.at("/" + slug + "/money/reminders/ladder", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance step(Said form) {
        Frame frame = frames.of(Tab.MONEY);
        return Pages.ladderstep(frame, cautions.of(List.of(FeeKind.REMINDER.code()), frame), form);
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.MONEY);
        List<Row> rows = ladders.ladder().steps().stream()
                .map(step -> new Row(
                        step.daysLate(), step.tone().code(), step.subject().in(frame.locale()), step.asksFee()))
                .toList();
        return Pages.ladder(frame, rows, form);
    }

    private static Map<String, String> fields(Step step) {
        return Map.of(
                "days",
                String.valueOf(step.daysLate()),
                "tone",
                step.tone().code(),
                "subjectEn",
                step.subject().en(),
                "subjectFr",
                step.subject().fr(),
                "bodyEn",
                step.body().en(),
                "bodyFr",
                step.body().fr(),
                "fee",
                step.asksFee() ? "yes" : "");
    }
}
