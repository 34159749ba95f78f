package changeover.web.field;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.Photos;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OwnVisits;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
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
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** What a camera adds to a finding: a photo is taken at the machine and goes onto the report beside its sentence. */
@Path("/{slug}/field/visits/{id}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class PhotoPages {

    private static final int CAPTION = 200;

    /** @param of the finding that it shows, in words; empty for none */
    public record Taken(UUID operation, String sha256, String caption, String of) {}

    public record View(
            UUID visit,
            String home,
            UUID task,
            String words,
            List<TaskView.Kept> findings,
            List<Taken> photos,
            boolean closed) {}

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance photos(Frame frame, View view, Said form, String made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OwnVisits visits;

    @Inject
    VisitViews checklists;

    @Inject
    OwnCatalogue own;

    @Inject
    Photos photos;

    @Inject
    CloseOut closeOut;

    @Inject
    CurrentTenant current;

    @Inject
    Clock clock;

    @GET
    @Path("tasks/{task}/photos")
    @Transactional
    public TemplateInstance photos(@PathParam("id") UUID id, @PathParam("task") UUID task) {
        VisitLists.Row row = visits.found(id);
        StopLines.Lines lines = checklists.lines(row);
        List<DaySheet.Said> findings = new SheetSoFar(lines.said()).findings(task);
        String latest = findings.isEmpty() ? "" : findings.getLast().id().toString();
        return page(row, lines, task, Said.filled(Map.of("finding", latest)), UUID.randomUUID());
    }

    @POST
    @Path("tasks/{task}/photos")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response keep(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @PathParam("task") UUID task,
            @RestForm("made") @Nullable String made,
            @RestForm("finding") @Nullable String finding,
            @RestForm("caption") @Nullable String caption,
            @RestForm("back") @Nullable List<String> back,
            @RestForm("photo") @Nullable FileUpload photo) {
        var typed = new Typed(fields(made, finding, caption, back));
        return desk.answer(
                () -> {
                    StopLines.Lines lines = checklists.lines(visits.found(id));
                    TaskPages.line(lines, task);
                    var telling = new Telling(typed.id("made"), clock.instant());
                    tell(telling, typed, task, new SheetSoFar(lines.said()), photo);
                    typed.understood();
                    telling.tell(closeOut, id, current.person());
                    return SaidOnce.at("/" + slug + "/field/visits/" + id + "/tasks/" + task + "/photos", "photo-kept");
                },
                refusals -> {
                    VisitLists.Row row = visits.found(id);
                    return page(
                            row,
                            checklists.lines(row),
                            task,
                            Said.again(typed, refusals, frames.locale()),
                            Telling.form(typed));
                });
    }

    /** A photo of the visit as we keep it. */
    @GET
    @Path("photos/{sha256}.jpg")
    @Produces("image/jpeg")
    @Transactional
    public Response picture(@PathParam("id") UUID id, @PathParam("sha256") String sha256) {
        return PaperAnswer.of(photos.ofVisit(visits.found(id).id(), sha256).orElseThrow(NotFoundException::new));
    }

    private void tell(Telling telling, Typed typed, UUID task, SheetSoFar sheet, @Nullable FileUpload photo) {
        List<DaySheet.Said> standing = sheet.photos(task);
        for (String operation : typed.each("back")) {
            standing.stream()
                    .filter(said -> said.id().toString().equals(operation))
                    .forEach(said -> telling.add(new Operation.TakeBack(said.id()), _ -> "back"));
        }
        byte[] bytes = Uploaded.bytes(photo);
        if (bytes.length > 0) {
            UUID finding = typed.idOrNone("finding");
            String caption = typed.line("caption", CAPTION);
            telling.add(
                    new Operation.Photographed(photos.store(bytes, null), finding, task, caption),
                    field -> field.equals("finding") ? "finding" : "picture");
        } else if (typed.each("back").isEmpty()) {
            typed.refuse(Refusal.of("photo.choose").at("picture"));
        }
    }

    private TemplateInstance page(VisitLists.Row row, StopLines.Lines lines, UUID task, Said form, UUID made) {
        Frame frame = frames.of(null);
        Catalogue catalogue = own.catalogue();
        var sheet = new SheetSoFar(lines.said());
        List<TaskView.Kept> findings = sheet.findings(task).stream()
                .map(said -> TaskViews.finding(said, catalogue, frame.locale()))
                .toList();
        return Pages.photos(
                frame,
                new View(
                        row.id(),
                        row.street(),
                        task,
                        TaskPages.line(lines, task).wording().in(frame.locale()),
                        findings,
                        sheet.photos(task).stream()
                                .map(said -> taken(said, findings))
                                .toList(),
                        row.how() != null),
                form,
                made.toString());
    }

    private static Taken taken(DaySheet.Said said, List<TaskView.Kept> findings) {
        String of = SheetSoFar.text(said, "finding");
        return new Taken(
                said.id(),
                SheetSoFar.text(said, "sha256"),
                SheetSoFar.text(said, "caption"),
                findings.stream()
                        .filter(finding -> finding.operation().toString().equals(of))
                        .findFirst()
                        .map(TaskView.Kept::words)
                        .orElse(""));
    }

    private static MultivaluedMap<String, String> fields(
            @Nullable String made, @Nullable String finding, @Nullable String caption, @Nullable List<String> back) {
        var fields = new MultivaluedHashMap<String, String>();
        fields.add("made", made == null ? "" : made);
        fields.add("finding", finding == null ? "" : finding);
        fields.add("caption", caption == null ? "" : caption);
        fields.put("back", back == null ? List.of() : back);
        return fields;
    }
}
