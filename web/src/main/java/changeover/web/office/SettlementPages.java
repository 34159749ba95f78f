package changeover.web.office;

import changeover.billing.ledger.RefundWay;
import changeover.billing.ledger.Settlement;
import changeover.billing.ledger.Settlements;
import changeover.billing.tax.ShippedSources;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Ending;
import changeover.contracts.agreements.EndingCause;
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
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An agreement that ends in mid-term: every way side by side, then the credit notes of the one that a person chose. */
@Path("/{slug}/agreements/{id}/settlement")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SettlementPages {

    public record Part(UUID invoiceId, String label, String net, String tax) {}

    public record Way(
            String code,
            boolean chosen,
            String kept,
            String credit,
            String total,
            String giveBack,
            String stillToBill,
            List<Part> parts) {}

    public record Waiting(UUID id, int number, String net) {}

    public record View(
            UUID id,
            int number,
            UUID customerId,
            String day,
            boolean ended,
            String why,
            String settledOn,
            String kept,
            String price,
            String billed,
            String paid,
            String rule,
            boolean read,
            List<Way> ways,
            List<Waiting> waiting) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance settlement(Frame frame, View view, List<EndingPages.Cause> causes, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Agreements agreements;

    @Inject
    Settlements settlements;

    @GET
    @Transactional
    public Response settlement(@PathParam("id") UUID id, @Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        LocalDate day = typed.dayOrNone("day");
        EndingCause cause = EndingPages.cause(typed);
        if (!typed.refusals().isEmpty()) {
            return desk.refuse(
                    typed.refusals(), refusals -> page(id, null, null, Said.again(typed, refusals, frames.locale())));
        }
        LocalDate shown = day == null ? today.day() : day;
        Said form = Said.filled(Map.of("day", shown.toString(), "cause", cause == null ? "" : cause.code()));
        return Response.ok(page(id, shown, cause, form)).build();
    }

    @POST
    public Response settle(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(id);
                    String way = typed.oneOf(
                            "way",
                            Arrays.stream(RefundWay.values())
                                    .map(RefundWay::code)
                                    .collect(Collectors.toSet()));
                    String why = typed.text("why", 500);
                    typed.understood();
                    List<UUID> notes = settlements.settle(id, way(way), today.day(), why);
                    return notes.size() == 1
                            ? SaidOnce.at("/" + slug + "/money/invoices/" + notes.getFirst(), "credit-drafted")
                            : SaidOnce.at("/" + slug + "/agreements/" + id + "/settlement", "settled");
                },
                refusals -> page(id, null, null, Said.again(typed, refusals, frames.locale())));
    }

    private static RefundWay way(String code) {
        return Arrays.stream(RefundWay.values())
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private Agreement found(UUID id) {
        return agreements.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, @Nullable LocalDate day, @Nullable EndingCause cause, Said form) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        Agreement agreement = found(id);
        Settlement settlement =
                settlements.of(id, day == null ? today.day() : day, cause).orElseThrow(NotFoundException::new);
        String why = agreements
                .ending(id)
                .flatMap(Ending::cause)
                .map(one -> one.wording().in(frame.locale()))
                .orElse("");
        return Pages.settlement(
                frame, view(agreement, settlement, why, frame), EndingPages.causes(frame.locale()), form);
    }

    private static View view(Agreement agreement, Settlement settlement, String why, Frame frame) {
        Settlement.Settled settled = settlement.settled();
        return new View(
                agreement.id(),
                agreement.number(),
                agreement.payerId(),
                frame.inWords(settlement.day()),
                settlement.ended(),
                why,
                settled == null ? "" : frame.inWords(settled.day()),
                settled == null ? "" : said(settled.kept(), frame),
                said(settlement.price(), frame),
                said(settlement.billed(), frame),
                said(settlement.paid(), frame),
                settlement.policy().rule().equals("own-terms")
                        ? ""
                        : ShippedSources.in(frame.locale(), settlement.policy().source()),
                settlement.policy().read(),
                settlement.ways().stream().map(way -> way(way, frame)).toList(),
                settlement.waiting().stream()
                        .map(one -> new Waiting(one.id(), one.instalment(), said(one.net(), frame)))
                        .toList());
    }

    private static Way way(Settlement.Way way, Frame frame) {
        return new Way(
                way.way().code(),
                way.chosen(),
                said(way.kept(), frame),
                said(way.credit(), frame),
                said(way.total(), frame),
                said(way.giveBack(), frame),
                way.stillToBill().isZero() ? "" : said(way.stillToBill(), frame),
                way.parts().stream()
                        .map(part -> new Part(
                                part.invoiceId(), part.label(), said(part.net(), frame), said(part.tax(), frame)))
                        .toList());
    }

    private static String said(Money money, Frame frame) {
        return money.format(frame.locale());
    }
}
