package changeover.web.office;

import changeover.contracts.oldsheet.OldSheets;
import changeover.contracts.oldsheet.SheetImport;
import changeover.contracts.oldsheet.SheetLook;
import changeover.contracts.oldsheet.SheetTable;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.words.Refusal;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
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
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** An old spreadsheet at the desk: brought, its columns named once, three of its rows looked at, then written or mended. */
@Path("/{slug}/homes/sheets")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class OldSheetPages {

    /** A file that was brought. */
    public record File(UUID id, String name, String day, boolean forgotten, boolean brought) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance oldsheets(Frame frame, List<File> files, Said form);

        static native TemplateInstance oldsheet(Frame frame, OldSheetView view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OldSheets sheets;

    @Inject
    SheetImport imports;

    @Inject
    TakeOver takeOver;

    @GET
    @Transactional
    public TemplateInstance all() {
        return all(Said.blank());
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response keep(@PathParam("slug") String slug, @RestForm("file") @Nullable FileUpload file) {
        byte[] bytes = Uploaded.bytes(file);
        return desk.answer(
                () -> "/" + slug + "/homes/sheets/" + sheets.keep(Uploaded.name(file), bytes),
                refusals -> all(Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale())));
    }

    @GET
    @Path("{sheet}")
    @Transactional
    public TemplateInstance one(@PathParam("sheet") UUID id) {
        return page(id, null, List.of());
    }

    /** How it is read is kept; the page then shows what comes of it. */
    @POST
    @Path("{sheet}/reading")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response read(
            @PathParam("slug") String slug, @PathParam("sheet") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    SheetTable table = table(id);
                    SheetLook.Ground ground = imports.ground();
                    LocalDate day = typed.day("takeOver");
                    sheets.read(id, SheetForm.reading(typed, table, ground));
                    takeOver.on(day);
                    return SaidOnce.at("/" + slug + "/homes/sheets/" + id, "sheet-read");
                },
                refusals -> page(id, typed, refusals));
    }

    /** @param what all (or nothing), or good: rows to be mended stay in the file */
    @POST
    @Path("{sheet}/homes")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response bring(
            @PathParam("slug") String slug, @PathParam("sheet") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    table(id);
                    imports.bring(id, "good".equals(typed.line("what", 10)));
                    return SaidOnce.at("/" + slug + "/homes/sheets/" + id, "sheet-brought");
                },
                refusals -> page(id, null, refusals));
    }

    @GET
    @Path("{sheet}/bad-rows.csv")
    @Produces("text/csv")
    @Transactional
    public Response badRows(@PathParam("sheet") UUID id) {
        SheetTable table = table(id);
        SheetImport.Looked looked = imports.look(table, sheets.reading(id, table), imports.ground());
        return CsvAnswer.of(imports.badRows(looked, frames.locale()), "bad-rows");
    }

    /** The file's bytes are taken away; what was written from it stays. */
    @POST
    @Path("{sheet}/removal")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response forget(@PathParam("slug") String slug, @PathParam("sheet") UUID id) {
        Function<List<Refusal>, TemplateInstance> again = refusals -> page(id, null, refusals);
        return desk.answer(
                () -> {
                    table(id);
                    sheets.forget(id);
                    return SaidOnce.at("/" + slug + "/homes/sheets", "sheet-forgotten");
                },
                again);
    }

    private TemplateInstance all(Said form) {
        Frame frame = frames.of(Tab.HOMES);
        List<File> files = sheets.all().stream()
                .map(kept -> new File(
                        kept.id(),
                        kept.name(),
                        frame.brief(kept.at().toLocalDate()),
                        kept.forgotten(),
                        kept.broughtAt() != null))
                .toList();
        return Pages.oldsheets(frame, files, form);
    }

    private TemplateInstance page(UUID id, @Nullable Typed typed, List<Refusal> refusals) {
        SheetTable table = table(id);
        OldSheets.Kept kept = sheets.one(id).orElseThrow(NotFoundException::new);
        SheetLook.Ground ground = imports.ground();
        SheetImport.Looked looked = imports.look(table, sheets.reading(id, table), ground);
        Frame frame = frames.of(Tab.HOMES);
        Said said = Said.again(typed == null ? new Typed(new MultivaluedHashMap<>()) : typed, refusals, frame.locale());
        Said form = typed == null ? new Said(SheetForm.said(looked).values(), said.errors(), said.top()) : said;
        return Pages.oldsheet(frame, OldSheetView.of(kept, looked, ground, frame), form);
    }

    private SheetTable table(UUID id) {
        return sheets.table(id).orElseThrow(NotFoundException::new);
    }
}
