package changeover.web.office;

import changeover.billing.payments.CashRounding;
import changeover.billing.payments.NewRefund;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Way;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What is kept for a customer: given back, or used for what is open. */
@Path("/{slug}/money/customers/{customer}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RefundPages {

    /** A way of paying in words. */
    public record WayWords(String code, String words) {}

    /**
     * @param most empty when nothing but deposits is kept
     * @param deposits kept beside it; empty for none
     */
    public record View(UUID id, String name, String most, String inCash, String deposits, List<WayWords> ways) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance refund(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Refunds refunds;

    @Inject
    Payments payments;

    @Inject
    Customers customers;

    @Inject
    Businesses businesses;

    @GET
    @Path("refunds")
    @Transactional
    public TemplateInstance refund(@PathParam("customer") UUID customer) {
        Money most = refunds.most(customer, today.day());
        return page(
                customer,
                Said.filled(Map.of(
                        "day", today.day().toString(), "amount", Written.of(most, frames.locale()), "way", "cheque")));
    }

    @POST
    @Path("refunds")
    public Response give(
            @PathParam("slug") String slug,
            @PathParam("customer") UUID customer,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(customer);
                    var day = typed.day("day");
                    var amount = typed.money("amount", businesses.current().currency());
                    Way way = Way.of(typed.oneOf("way", Way.codes()));
                    String reference = typed.line("reference", 140);
                    String note = typed.line("note", 500);
                    typed.understood();
                    refunds.give(new NewRefund(customer, day, way, amount, reference, note));
                    return SaidOnce.at("/" + slug + "/money/customers/" + customer, "refund-kept");
                },
                refusals -> page(customer, Said.again(typed, refusals, frames.locale())));
    }

    /** The credit pays what is open, the oldest first. */
    @POST
    @Path("settling")
    public Response settle(@PathParam("slug") String slug, @PathParam("customer") UUID customer) {
        return desk.answer(
                () -> {
                    found(customer);
                    Money used = payments.settle(customer, today.day());
                    String said = used.isZero() ? "credit-unused" : "credit-used";
                    return SaidOnce.at("/" + slug + "/money/customers/" + customer, said);
                },
                refusals ->
                        page(customer, Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale())));
    }

    private TemplateInstance page(UUID customer, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Customer found = found(customer);
        Money most = refunds.most(customer, frame.today());
        Money cash = CashRounding.of(most);
        Money deposits = refunds.kept(customer, most.currency());
        List<WayWords> ways = Way.chosen().stream()
                .map(way -> new WayWords(way.code(), way.wording().in(frame.locale())))
                .toList();
        return Pages.refund(
                frame,
                new View(
                        customer,
                        found.name(),
                        most.isZero() ? "" : most.format(frame.locale()),
                        cash.equals(most) ? "" : cash.format(frame.locale()),
                        deposits.isZero() ? "" : deposits.format(frame.locale()),
                        ways),
                form);
    }

    private Customer found(UUID id) {
        return customers.get(id).orElseThrow(NotFoundException::new);
    }
}
