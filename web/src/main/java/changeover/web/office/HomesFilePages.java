package changeover.web.office;

import changeover.contracts.homesfile.Fault;
import changeover.contracts.homesfile.HomesExport;
import changeover.contracts.homesfile.HomesImport;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
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
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** The homes file at the desk: looked at first, then brought in as the person chose; and taken out again. */
@Path("/{slug}/homes/file")
@RolesAllowed({"owner", "office"})
public class HomesFilePages {

    /** As many faults stand on the page. */
    private static final int SHOWN = 200;

    private static final String CSV = "text/csv;charset=UTF-8";

    /** What is wrong with a cell, in the reader's language. */
    public record Wrong(int row, String column, String why) {}

    /**
     * What was done with the file, or would be.
     *
     * @param dry whether it was only looked at
     * @param bad how many things are wrong
     * @param more how many of them are not shown
     * @param back the bad rows as text, empty when there are none or they were not asked for
     * @param link the same as an address to download it from
     */
    public record Result(
            boolean dry,
            HomesImport.Outcome outcome,
            List<Wrong> wrongs,
            int bad,
            int more,
            String back,
            String link) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance homesfile(Frame frame, String columns, @Nullable Result result, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    HomesImport imports;

    @Inject
    HomesExport exports;

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance page() {
        return page(null, Said.blank());
    }

    /** @param what look, all (or nothing), or good (rows in, bad rows back) */
    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.TEXT_HTML)
    public Response bring(@RestForm("file") @Nullable FileUpload file, @RestForm("what") @Nullable String what) {
        byte[] bytes = Uploaded.bytes(file);
        boolean dry = what == null || what.equals("look");
        HomesImport.Bad bad = "good".equals(what) ? HomesImport.Bad.RETURN : HomesImport.Bad.REFUSE;
        Callable<TemplateInstance> deed = () -> {
            if (bytes.length == 0) {
                throw Refusal.of("homesfile.choose").at("file").thrown();
            }
            HomesImport.Outcome outcome = imports.bring(bytes, dry, bad);
            return page(result(outcome, dry, bad, frames.locale()), Said.blank());
        };
        Function<List<Refusal>, TemplateInstance> again =
                refusals -> page(null, Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale()));
        return dry ? desk.look(deed, again) : desk.show(deed, again);
    }

    @GET
    @Path("homes.csv")
    @Transactional
    public Response take() {
        return csv(exports.take(null));
    }

    @POST
    @Path("homes.csv")
    @RolesAllowed("owner")
    public Response takeWithCodes(MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        String reason = typed.text("reason", 200);
        return desk.attempt(
                () -> {
                    typed.understood();
                    return csv(exports.take(reason));
                },
                refusals -> page(null, Said.again(typed, refusals, frames.locale())));
    }

    private static Result result(HomesImport.Outcome outcome, boolean dry, HomesImport.Bad bad, Locale locale) {
        List<Wrong> wrongs = outcome.faults().stream()
                .limit(SHOWN)
                .map(fault -> wrong(fault, locale))
                .toList();
        boolean back = !dry && bad == HomesImport.Bad.RETURN && outcome.badRows().length > 0;
        int count = outcome.faults().size();
        return new Result(
                dry,
                outcome,
                wrongs,
                count,
                count - wrongs.size(),
                back ? new String(outcome.badRows(), StandardCharsets.UTF_8) : "",
                back ? "data:text/csv;base64," + Base64.getEncoder().encodeToString(outcome.badRows()) : "");
    }

    private static Wrong wrong(Fault fault, Locale locale) {
        return new Wrong(fault.row(), fault.column(), Refusals.sentence(fault.why(), locale));
    }

    private TemplateInstance page(@Nullable Result result, Said form) {
        return Pages.homesfile(frames.of(Tab.HOMES), String.join(", ", HomesImport.columns()), result, form);
    }

    private static Response csv(byte[] file) {
        return Response.ok(file, CSV)
                .header("Content-Disposition", "attachment; filename=\"homes.csv\"")
                .header("Cache-Control", "no-store")
                .build();
    }
}
