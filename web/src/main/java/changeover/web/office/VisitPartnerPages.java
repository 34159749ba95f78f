package changeover.web.office;

import changeover.contracts.pictures.Picture;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.HourMoves;
import changeover.scheduling.partners.GivenVisit;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.partners.PartnerReports;
import changeover.scheduling.partners.Partners;
import changeover.scheduling.partnerwork.PartnerWork;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Uploaded;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** A visit given to a partner: with whom it is, their report, taken back, or closed as made by them. */
@Path("/{slug}/visits/{id}/partner")
@RolesAllowed({"owner", "office"})
public class VisitPartnerPages {

    public record Choice(String code, String words) {}

    /**
     * The page in one piece.
     *
     * @param with who has it; null while it is with nobody
     * @param told whether the customer was told an hour of ours
     */
    public record View(
            VisitInWords.View visit,
            PartnerPages.@Nullable Given with,
            boolean report,
            boolean told,
            List<Choice> partners,
            String made) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance visitpartner(
                Frame frame, View view, Said form, Said close, Said back, Said file);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VisitLists lists;

    @Inject
    VisitInWords inWords;

    @Inject
    Partners partners;

    @Inject
    GivenVisits given;

    @Inject
    PartnerReports reports;

    @Inject
    PartnerWork work;

    @Inject
    HourMoves moves;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance partner(@PathParam("id") UUID id) {
        Frame frame = frames.of(Tab.SEASON);
        VisitLists.Row row = found(id);
        Map<String, String> close = new HashMap<>();
        close.put("day", frame.today().toString());
        close.put("minutes", "0");
        return page(
                row,
                frame,
                Said.filled(Map.of("day", row.day() == null ? "" : row.day().toString())),
                Said.filled(close),
                Said.blank(),
                Said.blank());
    }

    @POST
    @Produces(MediaType.TEXT_HTML)
    public Response give(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return answer(
                slug,
                id,
                fields,
                typed -> {
                    var deal = new GivenVisits.Deal(
                            typed.id("partner"),
                            typed.day("day"),
                            typed.money("price", businesses.current().currency()),
                            typed.line("note", 2000));
                    var moving = MovingForm.of(typed);
                    typed.understood();
                    given.give(id, deal, moving);
                },
                (frame, said) -> page(found(id), frame, said, Said.blank(), Said.blank(), Said.blank()));
    }

    @POST
    @Path("return")
    @Produces(MediaType.TEXT_HTML)
    public Response takeBack(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return answer(
                slug,
                id,
                fields,
                typed -> {
                    String why = typed.text("why", 500);
                    typed.understood();
                    given.takeBack(id, why);
                },
                (frame, said) -> page(found(id), frame, Said.blank(), Said.blank(), said, Said.blank()));
    }

    @POST
    @Path("closure")
    @Produces(MediaType.TEXT_HTML)
    public Response close(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return answer(
                slug,
                id,
                fields,
                typed -> {
                    UUID made = typed.id("made");
                    PartnerWork.Said said = PartnerWorkForm.of(typed);
                    typed.understood();
                    work.close(id, said, made, current.person());
                },
                (frame, said) -> page(found(id), frame, Said.blank(), said, Said.blank(), Said.blank()));
    }

    @POST
    @Path("report")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.TEXT_HTML)
    public Response keepReport(
            @PathParam("slug") String slug, @PathParam("id") UUID id, @RestForm("file") @Nullable FileUpload file) {
        byte[] bytes = Uploaded.bytes(file);
        return answer(
                slug,
                id,
                new MultivaluedHashMap<>(),
                _ -> reports.keep(id, bytes),
                (frame, said) -> page(found(id), frame, Said.blank(), Said.blank(), Said.blank(), said));
    }

    @GET
    @Path("report")
    @Transactional
    public Response report(@PathParam("id") UUID id) {
        PartnerReports.Kept kept = reports.newest(found(id).id()).orElseThrow(NotFoundException::new);
        return kept.isPdf()
                ? PaperAnswer.of(kept.bytes(), "partner-report.pdf")
                : PaperAnswer.of(Picture.kept(kept.bytes()));
    }

    /** Shows the page again with what was typed. */
    private interface Again {
        TemplateInstance page(Frame frame, Said said);
    }

    private Response answer(
            String slug, UUID id, MultivaluedMap<String, String> fields, Consumer<Typed> deed, Again again) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    deed.accept(typed);
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                refusals -> {
                    Frame frame = frames.of(Tab.SEASON);
                    return again.page(frame, Said.again(typed, refusals, frame.locale()));
                });
    }

    private VisitLists.Row found(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(VisitLists.Row row, Frame frame, Said form, Said close, Said back, Said file) {
        GivenVisit with = given.of(row.id()).orElse(null);
        return Pages.visitpartner(
                frame,
                new View(
                        inWords.of(row, frame),
                        with == null ? null : PartnerPages.given(with, frame),
                        with != null && with.report(),
                        moves.isTold(row.id()),
                        partners.all().stream()
                                .map(one -> new Choice(one.id().toString(), one.name()))
                                .toList(),
                        close.value("made").isEmpty() ? UUID.randomUUID().toString() : close.value("made")),
                form,
                close,
                back,
                file);
    }
}
