package changeover.web.api;

import changeover.billing.ledger.RefundPolicy;
import changeover.billing.ledger.RefundWay;
import changeover.billing.ledger.Settlement;
import changeover.billing.ledger.Settlements;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.EndingCause;
import changeover.contracts.tenants.Today;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An agreement that ends in mid-term: every way worked through before anything is posted, then one of them. */
@Path("/api/v1/{slug}/agreements/{id}/settlement")
@RolesAllowed({"owner", "office"})
public class SettlementApi {

    /** What goes back of one invoice, before tax and of its taxes. */
    public record PartDocument(UUID invoice, String number, Amount net, Amount tax) {}

    /**
     * One way.
     *
     * @param chosen whether the place asks for it
     * @param total what is credited with taxes; {@code credit} before them
     * @param giveBack what was paid beyond what is owed then
     * @param stillToBill what is kept and was never billed, before tax
     */
    public record WayDocument(
            String way,
            boolean chosen,
            Amount kept,
            Amount credit,
            Amount total,
            Amount giveBack,
            Amount stillToBill,
            List<PartDocument> parts) {}

    /** An instalment that was not asked for yet, before tax. */
    public record WaitingDocument(UUID invoice, int instalment, Amount net) {}

    /** @param read whether the rule's source was read; false means from memory or at second hand */
    public record RuleDocument(String rule, String source, boolean read) {}

    /** @param kept before tax, earned from the day on */
    public record SettledOnDocument(LocalDate day, Amount kept) {}

    /**
     * @param ended whether it has ended; before that the day is a question
     * @param settled how it was settled last, null while it was not
     */
    public record SettlementDocument(
            UUID agreement,
            LocalDate day,
            boolean ended,
            RuleDocument rule,
            Amount price,
            Amount billed,
            Amount paid,
            List<WayDocument> ways,
            List<WaitingDocument> waiting,
            @Nullable SettledOnDocument settled) {}

    /** The drafts of the credit notes; none where only instalments fell. */
    public record SettledDocument(List<UUID> creditNotes) {}

    @Inject
    Agreements agreements;

    @Inject
    Settlements settlements;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Of one that holds: as if it ended on {@code day} (today) for {@code cause}. */
    @GET
    @Transactional
    public SettlementDocument settlement(
            @PathParam("id") UUID id,
            @Nullable @QueryParam("day") String day,
            @Nullable @QueryParam("cause") String cause) {
        LocalDate asked = day == null ? today.day() : AskedInQuery.day("day", day);
        String known = AskedInQuery.oneOf("cause", cause, EndingCause.codes());
        EndingCause why = known == null ? null : EndingCause.find(known).orElse(null);
        return settlements.of(id, asked, why).map(SettlementApi::document).orElseThrow(NotFoundException::new);
    }

    /** Writes the drafts of the credit notes of one {@code way}, and says {@code why}; instalments fall as far as they must. */
    @POST
    public Response settle(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "settlement " + id + body, () -> {
            var _ = agreements.find(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            String way = asked.oneOf(
                    "way",
                    Arrays.stream(RefundWay.values()).map(RefundWay::code).collect(Collectors.toSet()));
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            List<UUID> notes = settlements.settle(id, RefundWay.of(way), today.day(), why);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/agreements/" + id + "/settlement", new SettledDocument(notes));
        });
    }

    private static SettlementDocument document(Settlement settlement) {
        RefundPolicy policy = settlement.policy();
        Settlement.Settled settled = settlement.settled();
        return new SettlementDocument(
                settlement.agreementId(),
                settlement.day(),
                settlement.ended(),
                new RuleDocument(policy.rule(), policy.source(), policy.read()),
                Amount.of(settlement.price()),
                Amount.of(settlement.billed()),
                Amount.of(settlement.paid()),
                settlement.ways().stream().map(SettlementApi::way).toList(),
                settlement.waiting().stream()
                        .map(one -> new WaitingDocument(one.id(), one.instalment(), Amount.of(one.net())))
                        .toList(),
                settled == null ? null : new SettledOnDocument(settled.day(), Amount.of(settled.kept())));
    }

    private static WayDocument way(Settlement.Way way) {
        return new WayDocument(
                way.way().code(),
                way.chosen(),
                Amount.of(way.kept()),
                Amount.of(way.credit()),
                Amount.of(way.total()),
                Amount.of(way.giveBack()),
                Amount.of(way.stillToBill()),
                way.parts().stream()
                        .map(part -> new PartDocument(
                                part.invoiceId(), part.label(), Amount.of(part.net()), Amount.of(part.tax())))
                        .toList());
    }
}
