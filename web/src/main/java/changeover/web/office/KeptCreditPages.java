package changeover.web.office;

import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
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
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Customer by customer what is kept for them at the end of a day, and what they owe without any document. */
@Path("/{slug}/money/earned")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class KeptCreditPages {

    public record Kept(UUID customerId, String customer, String amount) {}

    /** @param beyond whether it is owed to us, and not kept for them */
    public record Credits(boolean beyond, String day, String asked, List<Kept> rows, Leaf leaf, String sum) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance keptcredits(Frame frame, Credits list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Owed owed;

    @Inject
    Businesses businesses;

    @GET
    @Path("kept")
    @Transactional
    public TemplateInstance kept(@Context UriInfo asked) {
        return list(asked, OwedBy::credit, false);
    }

    @GET
    @Path("beyond")
    @Transactional
    public TemplateInstance beyond(@Context UriInfo asked) {
        return list(asked, OwedBy::beyond, true);
    }

    private TemplateInstance list(UriInfo asked, Function<OwedBy, Money> of, boolean beyond) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate said = typed.dayOrNone("day");
        typed.understood();
        LocalDate day = said == null ? today.day() : said;
        Frame frame = frames.of(Tab.MONEY);
        List<OwedBy> customers = owed.byCustomer(day).stream()
                .filter(one -> of.apply(one).isPositive())
                .toList();
        Leaf leaf = Leaf.of(asked, customers.size());
        return Pages.keptcredits(
                frame,
                new Credits(
                        beyond,
                        frame.inWords(day),
                        day.toString(),
                        leaf.shown(customers).stream()
                                .flatMap(one -> row(one, of.apply(one), frame))
                                .toList(),
                        leaf,
                        EarnedPages.said(
                                Money.sum(
                                        customers.stream().map(of).toList(),
                                        businesses.current().currency()),
                                frame)));
    }

    private static Stream<Kept> row(OwedBy one, Money amount, Frame frame) {
        @Nullable UUID id = one.customerId();
        @Nullable String name = one.customer();
        return id == null
                ? Stream.empty()
                : Stream.of(new Kept(id, name == null ? "" : name, EarnedPages.said(amount, frame)));
    }
}
