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
            List<Choice> partners) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance visitpartner(Frame frame, View view, Said form);

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
        return page(id, Said.blank());
    }

    @POST
    @Produces(MediaType.TEXT_HTML)
    public Response give(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return answer(slug, id, fields, typed -> {
            var deal = new GivenVisits.Deal(
                    typed.id("partner"),
                    typed.day("day"),
                    typed.money("price", businesses.current().currency()),
                    typed.line("note", 2000));
            var moving = MovingForm.of(typed);
            typed.understood();
            given.give(id, deal, moving);
        });
    }

    @POST
    @Path("return")
    @Produces(MediaType.TEXT_HTML)
    public Response takeBack(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return answer(slug, id, fields, typed -> {
            String why = typed.text("why", 500);
            typed.understood();
            given.takeBack(id, why);
        });
    }

    @POST
    @Path("closure")
    @Produces(MediaType.TEXT_HTML)
    public Response close(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return answer(slug, id, fields, typed -> {
            UUID made = typed.id("made");
            PartnerWork.Said said = PartnerWorkForm.of(typed);
            typed.understood();
            work.close(id, said, made, current.person());
        });
    }

    @POST
    @Path("report")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.TEXT_HTML)
    public Response keepReport(
            @PathParam("slug") String slug, @PathParam("id") UUID id, @RestForm("file") @Nullable FileUpload file) {
        byte[] bytes = Uploaded.bytes(file);
        return answer(slug, id, new MultivaluedHashMap<>(), _ -> reports.keep(id, bytes));
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

    private Response answer(String slug, UUID id, MultivaluedMap<String, String> fields, Consumer<Typed> deed) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    deed.accept(typed);
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    private VisitLists.Row found(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, Said typed) {
        Frame frame = frames.of(Tab.SEASON);
        VisitLists.Row row = found(id);
        GivenVisit with = given.of(id).orElse(null);
        return Pages.visitpartner(
                frame,
                new View(
                        inWords.of(row, frame),
                        with == null ? null : PartnerPages.given(with, frame),
                        with != null && with.report(),
                        moves.isTold(id),
                        partners.all().stream()
                                .map(one -> new Choice(one.id().toString(), one.name()))
                                .toList()),
                typed.over(with == null ? toGive(row) : toClose(frame)));
    }

    private static Map<String, String> toGive(VisitLists.Row row) {
        return row.day() == null ? Map.of() : Map.of("day", row.day().toString());
    }

    private static Map<String, String> toClose(Frame frame) {
        return Map.of("made", UUID.randomUUID().toString(), "day", frame.today().toString(), "minutes", "0");
    }
}
