package changeover.web.api;

import changeover.billing.invoices.NumberSeries;
import changeover.billing.invoices.NumberedKind;
import changeover.contracts.tenants.Today;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How invoices and credit notes are numbered, each in a series of its own. */
@Path("/api/v1/{slug}/numbers")
@RolesAllowed({"owner", "office"})
public class NumbersApi {

    /**
     * A series as the API says it.
     *
     * @param kind invoice or credit
     * @param next how a document of today would be numbered
     * @param begun whether the series has its first number, which can then no longer be chosen
     */
    public record SeriesDocument(String kind, String pattern, String next, boolean begun) {}

    @Inject
    NumberSeries series;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<SeriesDocument> all() {
        return Arrays.stream(NumberedKind.values()).map(this::document).toList();
    }

    /** From the next document on: {@code kind, pattern}, and the first {@code number} while the series has none. */
    @POST
    @RolesAllowed("owner")
    public Response choose(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "numbers " + body, () -> {
            Asked asked = Asked.of(body, json);
            Map<String, NumberedKind> kinds =
                    Arrays.stream(NumberedKind.values()).collect(Collectors.toMap(NumberedKind::code, one -> one));
            String said = asked.oneOf("kind", kinds.keySet());
            String pattern = asked.text("pattern", 40);
            @Nullable
            Integer first = asked.value("number") == null ? null : asked.whole("number", 1, Integer.MAX_VALUE);
            asked.nothingElse().understood();
            NumberedKind kind = kinds.getOrDefault(said, NumberedKind.INVOICE);
            series.choose(kind, pattern);
            if (first != null) {
                series.first(kind, today.day(), first);
            }
            return Once.Answer.done(document(kind));
        });
    }

    private SeriesDocument document(NumberedKind kind) {
        NumberSeries.Next next = series.next(kind, today.day());
        return new SeriesDocument(kind.code(), next.pattern().text(), next.label(), next.begun());
    }
}
