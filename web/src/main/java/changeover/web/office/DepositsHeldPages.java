package changeover.web.office;

import changeover.billing.payments.DepositsHeld;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The deposits that were still kept for their work at the end of any day. */
@Path("/{slug}/money/earned")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DepositsHeldPages {

    public record Row(
            UUID id,
            long number,
            String words,
            UUID customerId,
            String customer,
            String day,
            String amount,
            String left) {}

    public record Deposits(String day, String asked, List<Row> rows, String sum) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance depositsheld(Frame frame, Deposits list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    DepositsHeld held;

    @Inject
    Businesses businesses;

    @GET
    @Path("deposits")
    @Transactional
    public TemplateInstance deposits(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate said = typed.dayOrNone("day");
        typed.understood();
        LocalDate day = said == null ? today.day() : said;
        Frame frame = frames.of(Tab.MONEY);
        List<DepositsHeld.Held> all = held.on(day);
        return Pages.depositsheld(
                frame,
                new Deposits(
                        frame.inWords(day),
                        day.toString(),
                        all.stream().map(one -> row(one, frame)).toList(),
                        sum(all).format(frame.locale())));
    }

    private Money sum(List<DepositsHeld.Held> all) {
        return Money.sum(
                all.stream().map(DepositsHeld.Held::left).toList(),
                businesses.current().currency());
    }

    private static Row row(DepositsHeld.Held one, Frame frame) {
        return new Row(
                one.id(),
                one.number(),
                one.words(),
                one.customerId(),
                one.customer(),
                frame.brief(one.day()),
                one.amount().format(frame.locale()),
                one.left().format(frame.locale()));
    }
}
