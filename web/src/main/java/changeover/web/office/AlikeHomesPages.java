package changeover.web.office;

import changeover.contracts.merging.AlikeHomes;
import changeover.contracts.merging.HomeMerges;
import changeover.contracts.merging.Likeness;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Homes that look like one: two are offered side by side, a person says whether they are, and may undo it for a day. */
@Path("/{slug}/homes/alike")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AlikeHomesPages {

    /** So many pairs on a page: those that follow come when these are answered. */
    private static final int SHOWN = 50;

    public record Side(UUID id, String line, String people, String telephones) {}

    public record Pair(Side one, Side other, boolean street, boolean person, boolean telephone) {}

    /** A merge that stands. */
    public record Merged(
            UUID id, UUID homeId, String home, UUID otherId, String other, boolean undoable, String until) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance alikehomes(
                Frame frame, List<Pair> pairs, int count, List<Merged> merged, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    AlikeHomes alike;

    @Inject
    HomeMerges merges;

    @Inject
    Today today;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance page() {
        return page(Said.blank());
    }

    /** The first of the two lives on, the second goes into it; or they are two. */
    @POST
    public Response answer(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID one = typed.id("one");
                    UUID other = typed.id("other");
                    String what = typed.oneOf("what", Set.of("first", "second", "apart"));
                    typed.understood();
                    switch (what) {
                        case "first" -> merges.merge(one, other);
                        case "second" -> merges.merge(other, one);
                        default -> merges.keepApart(one, other);
                    }
                    return SaidOnce.at(
                            "/" + slug + "/homes/alike", what.equals("apart") ? "homes-apart" : "homes-merged");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("merges/{merge}/undoing")
    public Response undo(@PathParam("slug") String slug, @PathParam("merge") UUID merge) {
        return desk.answer(
                () -> {
                    if (merges.all().stream().noneMatch(one -> one.id().equals(merge))) {
                        throw new jakarta.ws.rs.NotFoundException();
                    }
                    merges.undo(merge);
                    return SaidOnce.at("/" + slug + "/homes/alike", "merge-undone");
                },
                this::again);
    }

    private TemplateInstance again(List<Refusal> refusals) {
        return page(Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale()));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.HOMES);
        List<AlikeHomes.Alike> all = alike.all();
        return Pages.alikehomes(
                frame,
                all.stream().limit(SHOWN).map(AlikeHomesPages::pair).toList(),
                all.size(),
                merges.all().stream().map(merge -> merged(merge, frame)).toList(),
                form);
    }

    private static Pair pair(AlikeHomes.Alike two) {
        return new Pair(
                side(two.one()),
                side(two.other()),
                two.common().contains(Likeness.Common.STREET),
                two.common().contains(Likeness.Common.PERSON),
                two.common().contains(Likeness.Common.TELEPHONE));
    }

    private static Side side(Likeness.Dwelling home) {
        String unit = home.unitLabel() == null ? "" : ", " + home.unitLabel();
        String postal = home.postal() == null ? "" : " " + home.postal();
        return new Side(
                home.id(),
                home.street() + unit + ", " + home.city() + postal,
                home.people().stream().sorted().collect(Collectors.joining(", ")),
                home.telephones().stream().sorted().collect(Collectors.joining(", ")));
    }

    private Merged merged(HomeMerges.Merge merge, Frame frame) {
        LocalDateTime until =
                merge.undoableUntil().atZone(businesses.current().zone()).toLocalDateTime();
        return new Merged(
                merge.id(),
                merge.homeId(),
                merge.home(),
                merge.otherId(),
                merge.other(),
                merge.isUndoable(today.now()),
                frame.inWords(until.toLocalDate()) + ", " + until.format(DateTimeFormatter.ofPattern("HH:mm")));
    }
}
