package changeover.web.api;

import changeover.billing.notices.OfferMail;
import changeover.contracts.agreements.Acceptance;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.EndingCause;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.PlanChanges;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.agreements.Yes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
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
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Agreements: offered to a home, accepted by a customer, ended. */
@Path("/api/v1/{slug}/agreements")
@RolesAllowed({"owner", "office"})
public class AgreementsApi {

    /** An agreement as the API says it; {@code until} is its last day. */
    public record AgreementDocument(
            UUID id,
            int number,
            UUID home,
            UUID signer,
            UUID payer,
            Wording plan,
            LocalDate from,
            LocalDate until,
            Amount price,
            int instalments,
            int visits,
            String state,
            @Nullable LocalDate acceptedOn,
            @Nullable String acceptedBy,
            @Nullable String channel) {}

    @Inject
    Agreements agreements;

    @Inject
    Offers offers;

    @Inject
    PlanChanges changes;

    @Inject
    OfferMail mail;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Those of one home, the newest first. */
    @GET
    @Transactional
    public List<AgreementDocument> of(@QueryParam("home") UUID home) {
        if (home == null) {
            throw new NotFoundException();
        }
        return agreements.of(home).stream().map(this::document).toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public AgreementDocument one(@PathParam("id") UUID id) {
        return document(agreements.find(id).orElseThrow(NotFoundException::new));
    }

    /** Offers a plan to a home: {@code home}, {@code plan} (ids) and the first day of the term, {@code from}. */
    @POST
    public Response offer(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "agreements " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID home = asked.id("home");
            UUID plan = asked.id("plan");
            LocalDate from = asked.day("from");
            asked.nothingElse().understood();
            Agreement agreement = agreements.offer(offers.forHome(home, plan, from, today.day()));
            mail.write(List.of(agreement.id()));
            return Once.Answer.made("/api/v1/" + slug + "/agreements/" + agreement.id(), document(agreement));
        });
    }

    /**
     * Offers another plan in mid-term: {@code plan} (id) and its first day, {@code from}. With the yes to it this agreement ends
     * on that day.
     */
    @POST
    @Path("{id}/plan-change")
    public Response change(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "plan-change " + id + body, () -> {
            var _ = agreements.find(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            UUID plan = asked.id("plan");
            LocalDate from = asked.day("from");
            asked.nothingElse().understood();
            Agreement agreement = changes.offer(id, plan, from, today.day());
            mail.write(List.of(agreement.id()));
            return Once.Answer.made("/api/v1/" + slug + "/agreements/" + agreement.id(), document(agreement));
        });
    }

    /** The customer's yes: {@code by}, {@code channel}, optionally {@code day} and {@code paidByCard}. */
    @POST
    @Path("{id}/acceptance")
    public Response accept(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "acceptance " + id + body, () -> {
            var _ = agreements.find(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            String by = asked.text("by", 120);
            String channel = asked.oneOf("channel", Set.of("counter", "distance", "home", "elsewhere"));
            LocalDate day = asked.dayOrNone("day");
            boolean card = asked.yes("paidByCard");
            asked.nothingElse().understood();
            agreements.accept(id, new Yes(by, day == null ? today.day() : day, SaleChannel.ofCode(channel), card));
            return Once.Answer.done(document(agreements.find(id).orElseThrow()));
        });
    }

    /** Ends an agreement: {@code day} and {@code why}, optionally {@code cause}, which the law of a place may ask for. */
    @POST
    @Path("{id}/ending")
    public Response end(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "ending " + id + body, () -> {
            var _ = agreements.find(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.day("day");
            EndingCause cause = asked.value("cause") == null
                    ? null
                    : EndingCause.find(asked.oneOf("cause", EndingCause.codes()))
                            .orElse(null);
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            agreements.end(id, day, cause, why);
            return Once.Answer.done(document(agreements.find(id).orElseThrow()));
        });
    }

    private AgreementDocument document(Agreement agreement) {
        Acceptance acceptance = agreements.acceptance(agreement.id()).orElse(null);
        return new AgreementDocument(
                agreement.id(),
                agreement.number(),
                agreement.homeId(),
                agreement.signerId(),
                agreement.payerId(),
                agreement.planName(),
                agreement.term().from(),
                agreement.term().last(),
                Amount.of(agreement.price()),
                agreement.instalments(),
                agreement.visits(),
                agreements.state(agreement, today.day()).name().toLowerCase(java.util.Locale.ROOT),
                acceptance == null ? null : acceptance.day(),
                acceptance == null ? null : acceptance.byName(),
                acceptance == null ? null : acceptance.channel().code());
    }
}
