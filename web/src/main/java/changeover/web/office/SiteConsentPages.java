package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.estimates.ConsentRules;
import changeover.billing.estimates.SiteConsents;
import changeover.billing.tax.TaxQuestion;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether a repair may be signed on the spot, by place: what the law's rows say, and what the owner has read, with its source. */
@Path("/{slug}/shop/consents")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SiteConsentPages {

    public record Row(String place, String from, boolean allowed, String source) {}

    /** A row of the law of the business's own place. */
    public record Law(String place, String why, String source) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance siteconsents(Frame frame, List<Law> laws, List<Row> rows, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    SiteConsents consents;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.filled(Map.of("from", today.day().toString(), "region", region(), "allowed", "no")));
    }

    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String region = typed.text("region", 10);
                    LocalDate from = typed.day("from");
                    boolean allowed =
                            typed.oneOf("allowed", Set.of("yes", "no")).equals("yes");
                    String source = typed.text("source", 300);
                    typed.understood();
                    var _ = consents.set(region, from, allowed, source);
                    return SaidOnce.at("/" + slug + "/shop/consents", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private String region() {
        Business business = businesses.current();
        return TaxQuestion.region(business.country(), business.region());
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.siteconsents(
                frame,
                ConsentRules.of(region(), frame.today()).stream()
                        .map(law -> new Law(place(law.place(), frame), law.why().in(frame.locale()), law.source()))
                        .toList(),
                consents.all().stream()
                        .map(row -> new Row(
                                place(row.region(), frame), frame.brief(row.from()), row.allowed(), row.source()))
                        .toList(),
                form);
    }

    private static String place(String region, Frame frame) {
        return Places.region(Words.in(frame.locale()), region);
    }
}
