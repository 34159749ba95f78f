package changeover.web.office;

import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.payments.Deposit;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
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
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Money taken before the work: kept, applied to an invoice, given back. */
@Path("/{slug}/money")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DepositPages {

    public record Choice(String code, String words) {}

    public record Row(
            UUID id,
            long number,
            String day,
            UUID customerId,
            String customer,
            UUID homeId,
            String street,
            @Nullable UUID agreementId,
            @Nullable UUID callId,
            String words,
            String amount,
            String applied,
            String back,
            String left) {}

    public record Standing(Row row, List<Choice> open, List<Choice> ways) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance deposits(Frame frame, List<Row> rows);

        static native TemplateInstance deposit(Frame frame, Standing standing, Said form);

        static native TemplateInstance depositback(Frame frame, Standing standing, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Deposits deposits;

    @Inject
    Owed owed;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @Inject
    Documents documents;

    @Inject
    DocumentsToMake papers;

    /** Those with something left, of one customer when one is asked for. */
    @GET
    @Path("deposits")
    @Transactional
    public TemplateInstance list(@Nullable @QueryParam("customer") UUID customer) {
        Frame frame = frames.of(Tab.MONEY);
        return Pages.deposits(
                frame,
                deposits.all().stream()
                        .filter(one -> one.left().isPositive())
                        .filter(one -> customer == null || one.customerId().equals(customer))
                        .map(one -> row(one, frame))
                        .toList());
    }

    @GET
    @Path("deposits/{id}")
    @Transactional
    public TemplateInstance one(@PathParam("id") UUID id) {
        return page(id, Said.filled(Map.of("day", today.day().toString())));
    }

    @POST
    @Path("deposits/{id}/applications")
    public Response apply(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    mine(id);
                    UUID invoice = typed.id("invoice");
                    var day = typed.day("day");
                    @Nullable
                    Money amount = typed.line("amount", 20) == null
                            ? null
                            : typed.money("amount", businesses.current().currency());
                    typed.understood();
                    deposits.apply(id, invoice, day, amount);
                    return SaidOnce.at("/" + slug + "/money/deposits/" + id, "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("deposits/{id}/returns")
    @Transactional
    public TemplateInstance giveBack(@PathParam("id") UUID id) {
        Deposit deposit = mine(id);
        return back(
                id,
                Said.filled(Map.of(
                        "day",
                        today.day().toString(),
                        "amount",
                        Written.of(deposit.left(), frames.locale()),
                        "way",
                        deposit.way().code())));
    }

    @POST
    @Path("deposits/{id}/returns")
    public Response giveBack(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    mine(id);
                    var day = typed.day("day");
                    Way way = way(typed);
                    Money amount = typed.money("amount", businesses.current().currency());
                    String reference = typed.line("reference", 140);
                    typed.understood();
                    deposits.giveBack(id, day, way, amount, reference);
                    return SaidOnce.at("/" + slug + "/money/deposits/" + id, "kept");
                },
                refusals -> back(id, Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("deposits/{id}/pdf")
    @Produces("application/pdf")
    public Response receipt(@PathParam("id") UUID id) {
        current.run(current.id(), current.person(), () -> {
            Deposit deposit = mine(id);
            documents.order(List.of(Wanted.of(PaperKind.RECEIPT, deposit.id())));
            return deposit;
        });
        return PaperAnswer.of(papers.newest(current.id(), PaperKind.RECEIPT, id).orElseThrow(NotFoundException::new));
    }

    static Way way(Typed typed) {
        return Way.of(typed.oneOf("way", Way.codes()));
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        return Pages.deposit(frame, standing(id, frame), form);
    }

    private TemplateInstance back(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        return Pages.depositback(frame, standing(id, frame), form);
    }

    private Standing standing(UUID id, Frame frame) {
        Deposit deposit = mine(id);
        List<Choice> open = owed.open(deposit.customerId(), today.day()).stream()
                .map(item -> new Choice(
                        item.invoiceId().toString(),
                        item.label() + ", " + item.open().format(frame.locale())))
                .toList();
        return new Standing(row(deposit, frame), open, ways(frame));
    }

    static List<Choice> ways(Frame frame) {
        return Way.chosen().stream()
                .map(way -> new Choice(way.code(), way.wording().in(frame.locale())))
                .toList();
    }

    private Deposit mine(UUID id) {
        return deposits.of(id).orElseThrow(NotFoundException::new);
    }

    private static Row row(Deposit one, Frame frame) {
        return new Row(
                one.id(),
                one.number(),
                frame.brief(one.day()),
                one.customerId(),
                one.customer(),
                one.homeId(),
                one.street(),
                one.agreementId(),
                one.callId(),
                one.words(),
                one.amount().format(frame.locale()),
                one.applied().format(frame.locale()),
                one.back().format(frame.locale()),
                one.left().isPositive() ? one.left().format(frame.locale()) : "");
    }
}
