package changeover.web.api;

import changeover.contracts.digests.Sha256;
import changeover.contracts.homesfile.Fault;
import changeover.contracts.homesfile.HomesExport;
import changeover.contracts.homesfile.HomesImport;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusals;
import changeover.web.session.Once;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The homes file over the API: brought in, dry or for good, and taken out. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class HomesFileApi {

    /**
     * What was done with the file, or in a dry run would be.
     *
     * @param bad what is wrong, with row and column
     * @param badRows the bad rows as a homes file, null when there are none
     */
    public record ImportDocument(
            boolean dry,
            int rows,
            int written,
            int homes,
            int customers,
            int units,
            List<BadCell> bad,
            @Nullable String badRows) {}

    public record BadCell(int row, String column, String code, String reason) {}

    @Inject
    HomesImport imports;

    @Inject
    HomesExport exports;

    @Inject
    Businesses businesses;

    @Inject
    SecurityIdentity identity;

    @Inject
    Once once;

    /** @param bad {@code refuse}: all or nothing; {@code return}: good rows in, bad rows back */
    @POST
    @Path("imports/homes")
    @Consumes({"text/csv", "application/octet-stream", "text/plain"})
    public Response bring(
            @QueryParam("dry") @DefaultValue("false") boolean dry,
            @QueryParam("bad") @DefaultValue("refuse") String bad,
            @HeaderParam("Operation-Id") String operation,
            byte[] file) {
        HomesImport.Bad what = switch (bad) {
            case "refuse" -> HomesImport.Bad.REFUSE;
            case "return" -> HomesImport.Bad.RETURN;
            default ->
                throw changeover.contracts.words.Refusal.of("homesfile.bad")
                        .at("bad")
                        .thrown();
        };
        String digest = Sha256.hex(file);
        return once.answer(operation, "imports/homes " + dry + what + digest, () -> {
            HomesImport.Outcome outcome = imports.bring(file, dry, what);
            Locale locale = businesses.current().locale();
            return Once.Answer.done(new ImportDocument(
                    dry,
                    outcome.rows(),
                    outcome.written(),
                    outcome.homes(),
                    outcome.customers(),
                    outcome.units(),
                    outcome.faults().stream().map(fault -> cell(fault, locale)).toList(),
                    outcome.badRows().length == 0 ? null : new String(outcome.badRows(), StandardCharsets.UTF_8)));
        });
    }

    /** @param codes the reason why the owner takes keys and codes with the file; without one they stay here */
    @GET
    @Path("exports/homes.csv")
    @Produces("text/csv")
    @Transactional
    public Response take(@Nullable @QueryParam("codes") String codes) {
        boolean owner = identity.hasRole("owner");
        byte[] file = exports.take(owner && codes != null && !codes.isBlank() ? codes : null);
        return Response.ok(file, "text/csv; charset=UTF-8")
                .header("Content-Disposition", "attachment; filename=\"homes.csv\"")
                .build();
    }

    private static BadCell cell(Fault fault, Locale locale) {
        return new BadCell(fault.row(), fault.column(), fault.why().code(), Refusals.sentence(fault.why(), locale));
    }
}
