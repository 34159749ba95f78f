package changeover.web.api;

import changeover.billing.ledger.AccountCodes;
import changeover.billing.ledger.AccountNames;
import changeover.billing.ledger.Journal;
import changeover.billing.ledger.JournalEntry;
import changeover.billing.ledger.JournalFile;
import changeover.billing.ledger.Period;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.web.session.CsvAnswer;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The books of a period in double entry. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class JournalApi {

    /** @param account the accountant's own code for the role; null where nobody gave one */
    public record PostingDocument(
            String role, Wording name, @Nullable String account, Amount debit, Amount credit) {}

    /** @param invoice the document, null where there is none */
    public record EntryDocument(
            LocalDate day, String document, @Nullable UUID invoice, Wording words, List<PostingDocument> postings) {}

    /** @param until the last day, in */
    public record JournalDocument(LocalDate from, LocalDate until, List<EntryDocument> entries) {}

    @Inject
    Journal journal;

    @Inject
    AccountCodes codes;

    @Inject
    AccountNames names;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** Without days: the last quarter that is over. */
    @GET
    @Path("journal")
    @Transactional
    public JournalDocument journal(
            @Nullable @QueryParam("from") String from, @Nullable @QueryParam("until") String until) {
        Period period = AskedInQuery.period(from, until, today.day());
        Map<String, String> known = codes.all();
        AccountNames.Names said = names.now();
        return new JournalDocument(
                period.from(),
                period.until(),
                journal.of(period).stream()
                        .map(entry -> entry(entry, known, said))
                        .toList());
    }

    /** One row a posting; the postings of an entry bear its number. */
    @GET
    @Path("journal.csv")
    @Produces({"text/csv", MediaType.APPLICATION_JSON})
    @Transactional
    public Response file(@Nullable @QueryParam("from") String from, @Nullable @QueryParam("until") String until) {
        Period period = AskedInQuery.period(from, until, today.day());
        Locale locale = Locale.forLanguageTag(businesses.current().language());
        return CsvAnswer.of(JournalFile.of(journal.of(period), codes.all(), locale), "journal", period);
    }

    private static EntryDocument entry(JournalEntry entry, Map<String, String> known, AccountNames.Names said) {
        return new EntryDocument(
                entry.day(),
                entry.document(),
                entry.invoiceId(),
                entry.words(),
                entry.postings().stream()
                        .map(one -> new PostingDocument(
                                one.role(),
                                said.of(one.role()),
                                known.get(one.role()),
                                Amount.of(one.debit()),
                                Amount.of(one.credit())))
                        .toList());
    }
}
