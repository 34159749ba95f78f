package changeover.web.office;

import changeover.billing.documents.MaintenanceProofPdf;
import changeover.billing.documents.ProofSheet;
import changeover.billing.documents.band.DayWords;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Proof of maintenance of a home: what was done, when, by whom, in either language, on a page and on paper. */
@Path("/{slug}/homes/{home}")
@RolesAllowed({"owner", "office"})
public class ProofPages {

    /** @param day in the words of the proof's language */
    public record Row(String day, String by, boolean household, List<String> works) {}

    /** The headings in the proof's own language. */
    public record Headings(
            String machines, String done, String nothing, String when, String what, String by, String household) {

        static Headings in(Locale locale) {
            ProofWords words = Bundles.of(ProofWords.class, locale);
            return new Headings(
                    words.machines(),
                    words.done(),
                    words.nothing(),
                    words.when(),
                    words.what(),
                    words.by(),
                    words.household());
        }
    }

    /** @param language of the proof as an address says it */
    public record View(UUID home, String language, Headings head, ProofSheet sheet, List<Row> rows) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance proof(Frame frame, View view);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Homes homes;

    @Inject
    Proofs proofs;

    /** @param language en or fr; the reader's own where nothing is said */
    @GET
    @Path("proof")
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance page(@PathParam("home") UUID id, @Nullable @QueryParam("language") String language) {
        Frame frame = frames.of(Tab.HOMES);
        Locale locale = locale(language, frame);
        ProofSheet sheet = proofs.of(found(id), locale);
        DayWords days = DayWords.of(locale);
        return Pages.proof(
                frame,
                new View(
                        id,
                        locale.getLanguage(),
                        Headings.in(locale),
                        sheet,
                        sheet.days().stream()
                                .map(day -> new Row(
                                        days.briefWithYear(day.day()),
                                        day.by() == null ? "" : day.by(),
                                        day.household(),
                                        day.works()))
                                .toList()));
    }

    @GET
    @Path("proof.pdf")
    @Produces("application/pdf")
    @Transactional
    public Response pdf(@PathParam("home") UUID id, @Nullable @QueryParam("language") String language) {
        Locale locale = locale(language, frames.of(Tab.HOMES));
        return PaperAnswer.of(MaintenanceProofPdf.bytes(proofs.of(found(id), locale)), "proof.pdf");
    }

    private static Locale locale(@Nullable String language, Frame frame) {
        return language == null ? frame.locale() : language.startsWith("fr") ? Locale.CANADA_FRENCH : Locale.CANADA;
    }

    private Home found(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }
}
