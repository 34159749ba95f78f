package changeover.web.api;

import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Invoices;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** Credit notes: drafted over the API, issued like any invoice. */
@Path("/api/v1/{slug}/credits")
@RolesAllowed({"owner", "office"})
public class CreditsApi {

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    InvoiceDocuments documents;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /**
     * Credits an issued invoice: {@code invoice} and {@code why}, optionally in French beside it, {@code whyFr}; with
     * {@code lines} (position, net) only in part.
     */
    @POST
    public Response credit(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "credits " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID invoice = asked.id("invoice");
            String why = asked.text("why", 500);
            String french = asked.value("whyFr") == null ? why : asked.text("whyFr", 500);
            Currency currency = businesses.current().currency();
            Map<Integer, Money> parts = new LinkedHashMap<>();
            for (Asked line : asked.each("lines")) {
                if (parts.put(line.whole("position", 1, 100_000), line.money("net", currency)) != null) {
                    asked.refuse(Refusal.of("credit.line-twice").at(line.path() + "position"));
                }
                line.nothingElse();
            }
            if (parts.isEmpty() && asked.value("lines") != null) {
                asked.refuse(Refusal.of("typed.missing").at("lines"));
            }
            asked.nothingElse().understood();
            var _ = invoices.view(invoice).orElseThrow(NotFoundException::new);
            var reason = new Wording(why, french);
            UUID draft = parts.isEmpty()
                    ? credits.inFull(invoice, today.day(), reason)
                    : credits.inPart(invoice, today.day(), parts, reason);
            return Once.Answer.made("/api/v1/" + slug + "/invoices/" + draft, documents.of(draft));
        });
    }
}
