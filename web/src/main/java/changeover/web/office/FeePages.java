package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.fees.Fee;
import changeover.billing.fees.FeeKind;
import changeover.billing.fees.Fees;
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
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is asked by place when a payment comes back or a reminder goes out, each with its source; the owner sets it. */
@Path("/{slug}/money/fees")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class FeePages {

    /** @param amount empty when nothing is asked any more */
    public record Row(String kind, String place, String from, String amount, String source) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance fees(Frame frame, List<Row> rows, List<FeeCautions.Caution> cautions, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Fees fees;

    @Inject
    FeeCautions cautions;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.filled(Map.of("from", today.day().toString(), "kind", "returned")));
    }

    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    FeeKind kind = FeeKind.of(typed.oneOf("kind", Set.of("returned", "reminder")))
                            .orElseThrow();
                    String region = typed.text("region", 10);
                    var from = typed.day("from");
                    var amount = typed.money("amount", businesses.current().currency());
                    String source = typed.text("source", 300);
                    typed.understood();
                    fees.set(kind, region, from, amount, source);
                    return SaidOnce.at("/" + slug + "/money/fees", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.MONEY);
        List<Fee> all = fees.all();
        return Pages.fees(
                frame,
                all.stream().map(fee -> row(fee, frame)).toList(),
                cautions.of(
                        Arrays.stream(FeeKind.values()).map(FeeKind::code).toList(),
                        all.stream().map(Fee::region).toList(),
                        frame),
                form);
    }

    private static Row row(Fee fee, Frame frame) {
        return new Row(
                fee.kind().code(),
                Places.region(Words.in(frame.locale()), fee.region()),
                frame.brief(fee.from()),
                fee.amount().isZero() ? "" : fee.amount().format(frame.locale()),
                fee.source());
    }
}
