package changeover.web.office;

import changeover.billing.ledger.TrustMoney;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.UUID;

/** The agreements whose money the law of the place keeps in trust, each with the rule's source. */
@Path("/{slug}/money/trust")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TrustPages {

    public record Row(UUID agreement, long number, String customer, String sold, String first, String paid) {}

    public record View(List<Row> rows, String sum, List<String> sources) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance trust(Frame frame, View view);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    TrustMoney trust;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list() {
        Frame frame = frames.of(Tab.MONEY);
        List<TrustMoney.Held> held = trust.all();
        List<Row> rows = held.stream()
                .map(one -> new Row(
                        one.agreementId(),
                        one.number(),
                        one.customer(),
                        frame.brief(one.sold()),
                        frame.brief(one.firstVisit()),
                        one.paid().format(frame.locale())))
                .toList();
        Money sum = Money.sum(
                held.stream().map(TrustMoney.Held::paid).toList(),
                businesses.current().currency());
        List<String> sources = held.stream()
                .map(one -> one.rule().source().in(frame.locale()))
                .distinct()
                .toList();
        return Pages.trust(frame, new View(rows, sum.format(frame.locale()), sources));
    }
}
