package changeover.web.api;

import changeover.contracts.digests.Sha256;
import changeover.contracts.oldsheet.OldSheets;
import changeover.contracts.oldsheet.SheetImport;
import changeover.contracts.oldsheet.SheetReading;
import changeover.contracts.oldsheet.SheetTable;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.web.session.Once;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An old spreadsheet over the API, read as the last one was: its columns are named once, on their page. */
@Path("/api/v1/{slug}/imports/sheet")
@RolesAllowed({"owner", "office"})
public class SheetsApi {

    /**
     * What was done with the file, or in a dry run would be.
     *
     * @param here homes that are in the register already and stay as they are
     * @param twice rows that only repeat another
     * @param badRows the bad rows with their reasons as a file, null when there are none
     */
    public record SheetDocument(
            boolean dry,
            int rows,
            int homes,
            int units,
            int agreements,
            int here,
            int twice,
            List<BadRow> bad,
            @Nullable String badRows) {}

    public record BadRow(int row, String column, String code, String reason) {}

    @Inject
    OldSheets sheets;

    @Inject
    SheetImport imports;

    @Inject
    Businesses businesses;

    @Inject
    Once once;

    /** @param bad {@code refuse}: all or nothing; {@code return}: good rows in, bad rows back */
    @POST
    @Consumes({"text/csv", "application/octet-stream", "text/plain"})
    public Response bring(
            @QueryParam("dry") @DefaultValue("false") boolean dry,
            @QueryParam("bad") @DefaultValue("refuse") String bad,
            @HeaderParam("Operation-Id") String operation,
            byte[] file) {
        if (!bad.equals("refuse") && !bad.equals("return")) {
            throw Refusal.of("homesfile.bad").at("bad").thrown();
        }
        return once.answer(operation, "imports/sheet " + dry + bad + Sha256.hex(file), () -> {
            SheetTable table = SheetTable.of(file);
            SheetReading reading = sheets.last(table)
                    .orElseThrow(() -> Refusal.of("oldsheet.not-named").thrown());
            SheetImport.Looked looked = imports.look(table, reading, imports.ground());
            if (!dry) {
                UUID id = sheets.keep("", file);
                sheets.read(id, reading);
                imports.bring(id, bad.equals("return"));
            }
            return Once.Answer.done(document(looked, dry));
        });
    }

    private SheetDocument document(SheetImport.Looked looked, boolean dry) {
        Locale locale = businesses.current().locale();
        return new SheetDocument(
                dry,
                looked.table().rows().size(),
                looked.fresh().size(),
                looked.units(),
                looked.agreements(),
                looked.here().size(),
                looked.look().twice(),
                looked.look().faults().stream()
                        .map(one -> new BadRow(
                                one.row(), one.column(), one.what().code(), Refusals.sentence(one.what(), locale)))
                        .toList(),
                looked.look().faults().isEmpty()
                        ? null
                        : new String(imports.badRows(looked, locale), StandardCharsets.UTF_8));
    }
}
