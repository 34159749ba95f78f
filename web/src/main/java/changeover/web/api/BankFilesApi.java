package changeover.web.api;

import changeover.billing.bank.BankFiles;
import changeover.billing.bank.Banks;
import changeover.billing.bank.OfxFile;
import changeover.contracts.digests.Sha256;
import changeover.contracts.words.Refusal;
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
import java.util.UUID;

/** A bank's file: OFX as it is, CSV by the columns that were said for that bank on its page. Each line is kept once. */
@Path("/api/v1/{slug}/bank-files")
@RolesAllowed({"owner", "office"})
public class BankFilesApi {

    /** How many lines were new, and how many had come before. */
    public record TakenDocument(UUID bank, int fresh, int known) {}

    @Inject
    Banks banks;

    @Inject
    BankFiles files;

    @Inject
    Once once;

    /** @param name of the bank or the account; a new name is fine for an OFX file */
    @POST
    @Consumes({"text/csv", "application/octet-stream", "text/plain"})
    public Response bring(
            @QueryParam("bank") @DefaultValue("") String name,
            @HeaderParam("Operation-Id") String operation,
            byte[] file) {
        return once.answer(operation, "bank-files " + name + Sha256.hex(file), () -> {
            UUID bank = OfxFile.isOne(file)
                    ? banks.named(name)
                    : banks.all().stream()
                            .filter(one -> one.name().equals(name.strip()))
                            .map(Banks.Bank::id)
                            .findFirst()
                            .orElseThrow(() ->
                                    Refusal.of("bank.not-found").at("bank").thrown());
            BankFiles.Taken taken = files.take(bank, file);
            return Once.Answer.done(new TakenDocument(bank, taken.fresh(), taken.known()));
        });
    }
}
