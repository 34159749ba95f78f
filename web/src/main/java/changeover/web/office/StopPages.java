package changeover.web.office;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.StopDeeds;
import changeover.scheduling.stopped.StopEnd;
import changeover.scheduling.stopped.StopLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.StopInWords;
import changeover.web.session.StopTyped;
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
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What must not be used: everything that is stopped with what has to be done by whom, and one of them until it is back. */
@Path("/{slug}/stopped")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class StopPages {

    private static final int PAGE = 50;
    /** How long after its end a stop's duties are still looked for; the longest shipped one takes fourteen days. */
    private static final int DUTY_DAYS = 60;

    /** A duty in the list of everything that has to be done. */
    public record Owed(StopInWords.View stop, StopInWords.Duty duty) {}

    /** A message about it. @param sent the day, or empty */
    public record Message(String to, String sent) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance stops(
                Frame frame,
                List<StopInWords.View> open,
                List<Owed> owed,
                List<StopInWords.View> over,
                int from,
                boolean more);

        static native TemplateInstance stop(
                Frame frame,
                StopInWords.View stop,
                StopInWords.Holders holders,
                List<OrderChoices.Choice> partners,
                List<Message> messages,
                String place,
                Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    StopLists lists;

    @Inject
    StopDeeds deeds;

    @Inject
    StopInWords words;

    @Inject
    StopTyped typing;

    @Inject
    StopByPartner byPartner;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("from") @DefaultValue("0") int from) {
        Frame frame = frames.of(Tab.HOMES);
        int start = Math.clamp(from, 0, 1_000_000);
        List<StopInWords.View> open = start == 0 ? words.of(lists.open(), frame) : List.of();
        List<StopInWords.View> over = words.of(lists.over(start, PAGE + 1), frame);
        return Pages.stops(
                frame,
                open,
                start == 0 ? owed(open, frame) : List.of(),
                over.stream().limit(PAGE).toList(),
                start,
                over.size() > PAGE);
    }

    /** What nobody has done yet, at what is stopped and at what was lately; what is late first. */
    private List<Owed> owed(List<StopInWords.View> open, Frame frame) {
        List<StopInWords.View> lately = words.of(lists.overSince(frame.today().minusDays(DUTY_DAYS)), frame);
        return Stream.concat(open.stream(), lately.stream())
                .flatMap(stop -> stop.duties().stream()
                        .filter(duty -> duty.doneBy().isEmpty())
                        .map(duty -> new Owed(stop, duty)))
                .sorted(Comparator.comparing((Owed one) -> !one.duty().late())
                        .thenComparing(one -> !one.duty().atOnce()))
                .toList();
    }

    @GET
    @Path("{stop}")
    @Transactional
    public TemplateInstance one(@PathParam("stop") UUID id) {
        return page(found(id), Said.blank());
    }

    /** A duty was done. */
    @POST
    @Path("{stop}/duties")
    public Response duty(
            @PathParam("slug") String slug, @PathParam("stop") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    String code = typed.text("code", 60);
                    String who = typed.text("who", 200);
                    LocalDate day = typed.day("day");
                    String said = typed.line("words", 2000);
                    typed.understood();
                    deeds.done(id, code, who, day, said);
                    return SaidOnce.at("/" + slug + "/stopped/" + id, "kept");
                },
                refusals -> again(id, typed, refusals));
    }

    /** Whether it is the only heat, and what heats the home tonight. */
    @POST
    @Path("{stop}/heat")
    public Response heat(
            @PathParam("slug") String slug, @PathParam("stop") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    HeatAnswer answer = typing.heat(typed);
                    deeds.heat(id, answer, current.person());
                    return SaidOnce.at("/" + slug + "/stopped/" + id, "kept");
                },
                refusals -> again(id, typed, refusals));
    }

    /** Whoever is signed in puts it back, with their own ticket. */
    @POST
    @Path("{stop}/service")
    public Response end(
            @PathParam("slug") String slug, @PathParam("stop") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    StopEnd how = typing.end(typed);
                    String done = typed.line("done", 2000);
                    typed.understood();
                    deeds.end(id, how, done == null ? "" : done, current.person());
                    return SaidOnce.at("/" + slug + "/stopped/" + id, "stop-ended");
                },
                refusals -> again(id, typed, refusals));
    }

    /** A licensed partner put it back; whoever is signed in writes it down. */
    @POST
    @Path("{stop}/partner")
    public Response endByPartner(
            @PathParam("slug") String slug, @PathParam("stop") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    byPartner.read(id, typed, current.person());
                    return SaidOnce.at("/" + slug + "/stopped/" + id, "stop-ended");
                },
                refusals -> again(id, typed, refusals));
    }

    private MachineStop found(UUID id) {
        return lists.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance again(UUID id, Typed typed, List<Refusal> refusals) {
        return page(found(id), Said.again(typed, refusals, frames.locale()));
    }

    private TemplateInstance page(MachineStop stop, Said typed) {
        Frame frame = frames.of(Tab.HOMES);
        Said form = typed.over(StopByPartner.known(frame));
        return Pages.stop(
                frame,
                words.of(stop, frame),
                words.holders(stop, frame),
                byPartner.choices(stop, frame),
                outbox.about(stop.id()).stream()
                        .map(one -> new Message(one.toName(), sent(one, frame)))
                        .toList(),
                frame.at("stopped/" + stop.id()),
                form);
    }

    private String sent(OutboxMessage message, Frame frame) {
        @Nullable Instant left = message.sentAt() == null ? message.printedAt() : message.sentAt();
        return left == null
                ? ""
                : frame.brief(LocalDate.ofInstant(left, businesses.current().zone()));
    }
}
