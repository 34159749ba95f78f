package changeover.web.office;

import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.billing.writeoffs.WriteOff;
import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.money.Money;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Debts that nobody will pay: given up on the invoice's page, listed by days, opened again when it was too soon. */
@Path("/{slug}/money")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class WriteOffPages {

    public record Sums(String amount, String tax, String lost) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance writeoff(
                Frame frame, UUID id, String label, String open, List<WriteOffRows.Row> rows, Said form);

        static native TemplateInstance writeoffs(
                Frame frame, String period, List<WriteOffRows.Row> rows, Sums sums, Said form);

        static native TemplateInstance openagain(Frame frame, UUID id, UUID invoiceId, String what, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Invoices invoices;

    @Inject
    Owed owed;

    @Inject
    WriteOffs writeOffs;

    @Inject
    WriteOffRows rows;

    @GET
    @Path("invoices/{id}/write-off")
    @Transactional
    public TemplateInstance form(@PathParam("id") UUID id) {
        return page(id, Said.filled(Map.of("day", today.day().toString())));
    }

    @POST
    @Path("invoices/{id}/write-off")
    public Response giveUp(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    InvoiceView view = invoices.view(id).orElseThrow(NotFoundException::new);
                    var day = typed.day("day");
                    @Nullable
                    Money amount = typed.line("amount", 20) == null ? null : typed.money("amount", view.currency());
                    String why = typed.text("why", 500);
                    typed.understood();
                    writeOffs.giveUp(id, day, amount, why);
                    return SaidOnce.at("/" + slug + "/money/invoices/" + id, "given-up");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        InvoiceView view = invoices.view(id).orElseThrow(NotFoundException::new);
        Money open = owed.item(id, today.day()).map(OpenItem::open).orElseGet(() -> Money.zero(view.currency()));
        return Pages.writeoff(
                frame,
                id,
                view.label() == null ? "" : view.label(),
                open.isZero() ? "" : WriteOffRows.said(open, frame),
                rows.of(writeOffs.ofInvoice(id), frame),
                form);
    }

    @GET
    @Path("write-offs")
    @Transactional
    public Response list(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        PeriodAsked period = PeriodAsked.of(typed, today.day());
        if (!period.refusals().isEmpty()) {
            return desk.refuse(
                    period.refusals(), refusals -> list(period, Said.again(typed, refusals, frames.locale())));
        }
        return Response.ok(list(period, Said.filled(period.fields()))).build();
    }

    private TemplateInstance list(PeriodAsked asked, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        List<WriteOff> given =
                writeOffs.between(asked.period().from(), asked.period().until());
        return Pages.writeoffs(
                frame,
                frame.inWords(asked.period().from()) + " – "
                        + frame.inWords(asked.period().until()),
                rows.of(given, frame),
                new Sums(
                        sum(given, WriteOff::amount, frame),
                        sum(given, WriteOff::tax, frame),
                        sum(given, WriteOff::lost, frame)),
                form);
    }

    private static String sum(List<WriteOff> given, Function<WriteOff, Money> column, Frame frame) {
        return given.stream()
                .map(column)
                .reduce(Money::plus)
                .map(money -> WriteOffRows.said(money, frame))
                .orElse("");
    }

    @GET
    @Path("write-offs/{id}/undoing")
    @Transactional
    public TemplateInstance undoing(@PathParam("id") UUID id) {
        return again(id, Said.filled(Map.of("day", today.day().toString())));
    }

    @POST
    @Path("write-offs/{id}/undoing")
    public Response undo(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    WriteOff given = writeOffs.of(id).orElseThrow(NotFoundException::new);
                    var day = typed.day("day");
                    String why = typed.text("why", 500);
                    typed.understood();
                    writeOffs.takeBack(id, day, why);
                    return SaidOnce.at("/" + slug + "/money/invoices/" + given.invoiceId(), "taken-back");
                },
                refusals -> again(id, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance again(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        WriteOff given = writeOffs.of(id).orElseThrow(NotFoundException::new);
        return Pages.openagain(
                frame, id, given.invoiceId(), WriteOffRows.said(given.left(), frame) + ", " + given.label(), form);
    }
}
