package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.tax.OwnTax;
import changeover.billing.tax.OwnTaxes;
import changeover.billing.tax.ShippedTaxes;
import changeover.billing.tax.TaxRow;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
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
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The dated taxes, each with its source; a place without a row refuses to issue until the owner adds one. */
@Path("/{slug}/shop/taxes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TaxPages {

    public record Row(
            String place, String label, String percent, String from, String until, String source, boolean own) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance taxes(Frame frame, List<Row> rows, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    OwnTaxes own;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.filled(Map.of("from", today.day().toString(), "category", "S")));
    }

    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String region = typed.text("region", 10);
                    String code = typed.text("code", 20);
                    var label = new Wording(typed.text("labelEn", 60), typed.text("labelFr", 60));
                    String category =
                            typed.oneOf("category", Set.of("S", "Z", "E", "AE", "K", "G", "O", "L", "M", "B"));
                    BigDecimal percent = typed.number("percent", BigDecimal.ZERO, BigDecimal.valueOf(100));
                    @Nullable String registration = typed.line("registration", 40);
                    var from = typed.day("from");
                    String source = typed.text("source", 500);
                    typed.understood();
                    own.add(new OwnTax.Facts(
                            region,
                            null,
                            null,
                            null,
                            own.all().size() + 1,
                            code,
                            label,
                            category,
                            percent,
                            registration,
                            from,
                            null,
                            source));
                    return SaidOnce.at("/" + slug + "/shop/taxes", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        List<Row> rows = Stream.concat(
                        own.rows().stream().map(row -> row(row, frame, true)),
                        ShippedTaxes.rows().stream().map(row -> row(row, frame, false)))
                .toList();
        return Pages.taxes(frame, rows, form);
    }

    private static Row row(TaxRow row, Frame frame, boolean own) {
        String percent = row.tax().percent().stripTrailingZeros().toPlainString();
        return new Row(
                Places.region(Words.in(frame.locale()), row.tax().region()),
                row.tax().label().in(frame.locale()),
                frame.locale().getLanguage().equals("fr") ? percent.replace('.', ',') : percent,
                frame.brief(row.from()),
                row.until() == null ? "" : frame.brief(row.until()),
                row.tax().source(),
                own);
    }
}
