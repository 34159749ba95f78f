package changeover.web.office;

import changeover.billing.payments.DraftsToPay;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.payments.Payments;
import changeover.billing.payments.StatementRow;
import changeover.billing.payments.Statements;
import changeover.billing.payments.Ticked;
import changeover.billing.payments.Way;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.tenants.Businesses;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Money coming in: who owes, a payment taken, a statement. */
@Path("/{slug}/money")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PaymentPages {

    /** An open document that a payment may pay, or a draft with its street and the day from which it may be issued. */
    public record Open(UUID id, String label, String due, String open) {}

    /** A way of paying in words. */
    public record WayWords(String code, String words) {}

    /** One line of a statement. */
    public record Entry(
            String day,
            String what,
            @Nullable UUID id,
            String said,
            String way,
            boolean stands,
            boolean cash,
            String amount,
            String balance) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance debtors(Frame frame, List<Debtor> debtors);

        static native TemplateInstance payment(
                Frame frame, Debtor customer, List<Open> open, List<Open> drafts, List<WayWords> ways, Said form);

        static native TemplateInstance statement(Frame frame, Debtor customer, List<Entry> entries);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    DraftsToPay drafts;

    @Inject
    Ticked ticked;

    @Inject
    Statements statements;

    @Inject
    Customers customers;

    @Inject
    Businesses businesses;

    @GET
    @Path("payments/new")
    @Transactional
    public TemplateInstance take(@Nullable @QueryParam("customer") UUID customer) {
        Frame frame = frames.of(Tab.MONEY);
        if (customer == null) {
            return Pages.debtors(frame, debtors(frame));
        }
        OwedBy standing = owed.of(customer, frame.today());
        return page(
                customer,
                Said.filled(Map.of(
                        "day",
                        frame.today().toString(),
                        "amount",
                        Written.of(standing.open(), frame.locale()),
                        "way",
                        "transfer")));
    }

    @POST
    @Path("customers/{customer}/payments")
    public Response take(
            @PathParam("slug") String slug,
            @PathParam("customer") UUID customer,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var currency = businesses.current().currency();
                    customer(customer);
                    var day = typed.day("day");
                    var amount = typed.money("amount", currency);
                    Set<String> ways = Way.codes();
                    Way way = Way.of(typed.oneOf("way", ways));
                    String reference = typed.line("reference", 140);
                    String note = typed.line("note", 500);
                    List<String> chosen = typed.each("invoice");
                    typed.understood();
                    List<NewPayment.Part> parts = ticked.parts(customer, chosen);
                    payments.take(new NewPayment(customer, day, way, amount, reference, note, parts));
                    return SaidOnce.at("/" + slug + "/money/customers/" + customer, "payment-kept");
                },
                refusals -> page(customer, Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("customers/{customer}")
    @Transactional
    public TemplateInstance statement(@PathParam("customer") UUID customer) {
        Frame frame = frames.of(Tab.MONEY);
        Customer found = customer(customer);
        List<Entry> entries = statements
                .of(customer, frame.today().minusYears(2), frame.today().plusDays(1))
                .stream()
                .map(row -> entry(row, frame))
                .toList();
        return Pages.statement(frame, debtor(found, frame), entries);
    }

    private TemplateInstance page(UUID customer, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Debtor debtor = debtor(customer(customer), frame);
        List<Open> open = owed.open(customer, frame.today()).stream()
                .map(item -> open(item, frame))
                .toList();
        List<WayWords> ways = Way.chosen().stream()
                .map(way -> new WayWords(way.code(), way.wording().in(frame.locale())))
                .toList();
        List<Open> unissued = drafts.of(customer, frame.today()).stream()
                .map(draft -> new Open(
                        draft.id(),
                        draft.street(),
                        frame.brief(draft.from()),
                        draft.left().format(frame.locale())))
                .toList();
        return Pages.payment(frame, debtor, open, unissued, ways, form);
    }

    private Customer customer(UUID id) {
        return customers.get(id).orElseThrow(NotFoundException::new);
    }

    private List<Debtor> debtors(Frame frame) {
        List<OwedBy> all = owed.byCustomer(frame.today());
        Map<UUID, Customer> known =
                customers
                        .all(all.stream()
                                .flatMap(one -> Stream.ofNullable(one.customerId()))
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(Customer::id, Function.identity()));
        return all.stream()
                .flatMap(one -> Stream.ofNullable(known.get(one.customerId())).map(who -> Debtor.of(who, one, frame)))
                .toList();
    }

    private Debtor debtor(Customer customer, Frame frame) {
        return Debtor.of(customer, owed.of(customer.id(), frame.today()), frame);
    }

    private static Open open(OpenItem item, Frame frame) {
        return new Open(
                item.invoiceId(),
                item.label(),
                frame.brief(item.dueDay()),
                item.open().format(frame.locale()));
    }

    private static Entry entry(StatementRow row, Frame frame) {
        return new Entry(
                frame.brief(row.day()),
                row.what(),
                row.id(),
                row.said() == null ? "" : row.said(),
                row.way() == null ? "" : row.way().wording().in(frame.locale()),
                row.stands(),
                row.way() == Way.CASH,
                row.amount().format(frame.locale()),
                row.balance().format(frame.locale()));
    }
}
