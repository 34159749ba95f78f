package changeover.web.api;

import changeover.billing.invoices.Discards;
import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftChange;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.invoices.Invoices;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Drafts: their lines written by hand, and the whole of one discarded, until it is issued. */
@Path("/api/v1/{slug}/invoices/{id}")
@RolesAllowed({"owner", "office"})
public class DraftsApi {

    private static final int LONGEST_LINE = 500;

    @Inject
    Invoices invoices;

    @Inject
    DraftsByHand drafts;

    @Inject
    Discards discards;

    @Inject
    InvoiceDocuments documents;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /**
     * The lines as they are to be, on the edition that If-Match names. A line with its {@code position} is kept, with other
     * {@code words, wordsFr, quantity, unitPrice, work, form} where they are given; one without is new: {@code words, wordsFr,
     * quantity, unit, unitPrice, work, form}; {@code wordsFr} is what a paper that must be French first says. A line that is not listed is taken off. Beside them {@code mayIssueFrom, dueDays, purchaseOrder}: what is not
     * named stays.
     */
    @PUT
    @Path("lines")
    public Response write(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "draft lines " + id + " " + ifMatch + body, () -> {
            DraftByHand draft = known(id);
            var edition = Edition.filledOn(ifMatch);
            Asked asked = Asked.of(body, json);
            List<DraftChange.Kept> kept = new ArrayList<>();
            List<DraftChange.Added> added = new ArrayList<>();
            for (Asked line : asked.each("lines")) {
                if (line.value("position") == null) {
                    added.add(added(line, draft.currency()));
                } else {
                    kept.add(kept(line, draft));
                }
                line.nothingElse();
            }
            if (asked.value("lines") == null) {
                asked.refuse(Refusal.of("typed.missing").at("lines"));
            }
            DraftChange.Terms terms = terms(asked, draft);
            asked.nothingElse().understood();
            drafts.change(id, edition, new DraftChange(kept, added, terms));
            return Once.Answer.done(documents.readable(id));
        });
    }

    private static DraftChange.@Nullable Terms terms(Asked asked, DraftByHand draft) {
        if (Stream.of("mayIssueFrom", "dueDays", "purchaseOrder").allMatch(term -> asked.value(term) == null)) {
            return null;
        }
        return new DraftChange.Terms(
                asked.value("mayIssueFrom") == null ? draft.mayIssueFrom() : asked.day("mayIssueFrom"),
                asked.value("purchaseOrder") == null ? draft.purchaseOrder() : asked.line("purchaseOrder", 60),
                asked.wholeOr("dueDays", 0, 365, draft.dueDays()));
    }

    private static DraftChange.Kept kept(Asked line, DraftByHand draft) {
        int position = line.whole("position", 1, 100_000);
        boolean fee = draft.lines().stream().anyMatch(one -> one.position() == position && one.work() == Work.FEE);
        return new DraftChange.Kept(
                position,
                line.value("words") == null ? null : line.text("words", LONGEST_LINE),
                line.value("quantity") == null ? null : quantity(line),
                line.value("unitPrice") == null ? null : line.money("unitPrice", draft.currency()),
                line.path() + "unitPrice",
                line.value("work") == null ? null : fee ? fee(line) : work(line),
                line.value("form") == null ? null : form(line),
                french(line));
    }

    private static DraftChange.Added added(Asked line, Currency currency) {
        String words = line.text("words", LONGEST_LINE);
        BigDecimal quantity = quantity(line);
        String unit = line.oneOf("unit", Set.copyOf(DraftsByHand.UNITS));
        Money price = line.money("unitPrice", currency);
        Work work = line.value("work") == null ? Work.REPAIR : work(line);
        ContractForm form = line.value("form") == null ? ContractForm.SEPARATE : form(line);
        return new DraftChange.Added(words, quantity, unit, price, work, form, french(line), line.path() + "unitPrice");
    }

    private static @Nullable String french(Asked line) {
        return line.value("wordsFr") == null ? null : line.text("wordsFr", LONGEST_LINE);
    }

    /** A fee stays one. */
    private static Work fee(Asked line) {
        line.oneOf("work", Set.of(Work.FEE.code()));
        return Work.FEE;
    }

    private static Work work(Asked line) {
        String work = line.oneOf("work", DraftsByHand.WORKS);
        return work.isEmpty() ? Work.REPAIR : Work.of(work);
    }

    private static ContractForm form(Asked line) {
        String form = line.oneOf("form", DraftsByHand.FORMS);
        return form.isEmpty() ? ContractForm.SEPARATE : ContractForm.of(form);
    }

    private static BigDecimal quantity(Asked line) {
        return line.decimal("quantity", DraftChange.LEAST, DraftChange.MOST);
    }

    /** The draft is not asked for: {@code why}; on the edition that If-Match names. It stays to be read. */
    @POST
    @Path("discard")
    public Response discard(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "discard " + id + " " + ifMatch + body, () -> {
            var _ = known(id);
            Asked asked = Asked.of(body, json);
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            discards.discard(id, Edition.filledOn(ifMatch), today.day(), why);
            return Once.Answer.done(documents.readable(id));
        });
    }

    private DraftByHand known(UUID id) {
        return drafts.of(id).orElseThrow(() -> {
            Refusal why = invoices.notADraft(id);
            return why.code().equals("invoice.not-found") ? new NotFoundException() : why.thrown();
        });
    }
}
