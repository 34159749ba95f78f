package changeover.web.office;

import changeover.billing.estimates.Offering;
import changeover.billing.invoices.NumberSeries;
import changeover.billing.invoices.NumberedKind;
import changeover.contracts.agreements.AgreementNumbers;
import changeover.contracts.tenants.Today;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How invoices, credit notes, estimates and agreements are numbered, each in a series of its own, and the first number of a series. */
@Path("/{slug}/shop/numbers")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NumbersPages {

    private static final String AGREEMENT = "agreement";

    private static final Set<String> KINDS =
            Arrays.stream(NumberedKind.values()).map(NumberedKind::code).collect(Collectors.toUnmodifiableSet());

    /** How estimates are numbered, and the next number. */
    public record Estimated(String pattern, String label) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance numbers(
                Frame frame,
                NumberSeries.Next invoice,
                NumberSeries.Next credit,
                Estimated estimated,
                int agreement,
                Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    NumberSeries series;

    @Inject
    Offering offering;

    @Inject
    AgreementNumbers agreements;

    @GET
    @Transactional
    public TemplateInstance page() {
        Map<String, String> fields = new HashMap<>();
        fields.put("kind", NumberedKind.INVOICE.code());
        fields.put("pattern", series.pattern(NumberedKind.INVOICE).text());
        return page(Said.filled(fields));
    }

    /** From the next document on; the first number only while the series has none. */
    @POST
    @RolesAllowed("owner")
    public Response choose(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    if (AGREEMENT.equals(fields.getFirst("kind"))) {
                        int number = typed.whole("number", 1, AgreementNumbers.MOST);
                        typed.understood();
                        agreements.begin(number);
                        return SaidOnce.at("/" + slug + "/shop/numbers", "kept");
                    }
                    NumberedKind kind =
                            NumberedKind.valueOf(typed.oneOf("kind", KINDS).toUpperCase(Locale.ROOT));
                    String pattern = typed.text("pattern", 40);
                    @Nullable
                    Integer first =
                            typed.line("number", 10) == null ? null : typed.whole("number", 1, Integer.MAX_VALUE);
                    typed.understood();
                    series.choose(kind, pattern);
                    if (first != null) {
                        series.first(kind, today.day(), first);
                    }
                    return SaidOnce.at("/" + slug + "/shop/numbers", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        return Pages.numbers(
                frames.of(Tab.SHOP),
                series.next(NumberedKind.INVOICE, today.day()),
                series.next(NumberedKind.CREDIT, today.day()),
                new Estimated(series.pattern(NumberedKind.ESTIMATE).text(), offering.nextLabel()),
                agreements.next(),
                form);
    }
}
