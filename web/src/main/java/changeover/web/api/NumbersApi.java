package changeover.web.api;

import changeover.billing.invoices.NumberSeries;
import changeover.billing.invoices.NumberedKind;
import changeover.contracts.agreements.AgreementNumbers;
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
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How invoices, credit notes, estimates and agreements are numbered, each in a series of its own. */
@Path("/api/v1/{slug}/numbers")
@RolesAllowed({"owner", "office"})
public class NumbersApi {

    /**
     * A series as the API says it.
     *
     * @param kind invoice, credit, estimate or agreement
     * @param pattern null for agreements, which have their bare numbers
     * @param next how a document of today would be numbered
     * @param begun whether the series has its first number, which can then no longer be chosen
     */
    public record SeriesDocument(String kind, @Nullable String pattern, String next, boolean begun) {}

    private static final String AGREEMENT = "agreement";

    @Inject
    NumberSeries series;

    @Inject
    AgreementNumbers agreements;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<SeriesDocument> all() {
        return Stream.concat(Arrays.stream(NumberedKind.values()).map(this::document), Stream.of(agreements()))
                .toList();
    }

    /**
     * From the next document on: {@code kind, pattern}, and the first {@code number} while the series has none. Agreements
     * have a {@code number} alone, beyond those that were given.
     */
    @POST
    @RolesAllowed("owner")
    public Response choose(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "numbers " + body, () -> {
            Asked asked = Asked.of(body, json);
            Map<String, NumberedKind> kinds =
                    Arrays.stream(NumberedKind.values()).collect(Collectors.toMap(NumberedKind::code, one -> one));
            Set<String> known = new TreeSet<>(kinds.keySet());
            known.add(AGREEMENT);
            String said = asked.oneOf("kind", known);
            if (said.equals(AGREEMENT)) {
                int number = asked.whole("number", 1, AgreementNumbers.MOST);
                asked.nothingElse().understood();
                agreements.begin(number);
                return Once.Answer.done(agreements());
            }
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

    private SeriesDocument agreements() {
        return new SeriesDocument(AGREEMENT, null, String.valueOf(agreements.next()), false);
    }

    private SeriesDocument document(NumberedKind kind) {
        NumberSeries.Next next = series.next(kind, today.day());
        return new SeriesDocument(kind.code(), next.pattern().text(), next.label(), next.begun());
    }
}
