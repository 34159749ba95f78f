package changeover.web.api;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The business's plans: read, drafted, rewritten, put on sale. */
@Path("/api/v1/{slug}/plans")
@RolesAllowed({"owner", "office"})
public class PlansApi {

    /** A plan as the API says it. */
    public record PlanDocument(
            UUID id,
            String code,
            Wording name,
            int visits,
            Amount price,
            BigDecimal discountPercent,
            int instalments,
            int includedMinutes,
            boolean coversRepairs,
            @Nullable LocalDate onSaleFrom,
            @Nullable LocalDate withdrawnOn,
            List<TaskDocument> tasks,
            List<PlanFacts.Included> parts,
            int version) {}

    /** @param cadence null: as often as the catalogue says */
    public record TaskDocument(String task, @Nullable JsonNode cadence) {}

    @Inject
    Plans plans;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<PlanDocument> all() {
        return plans.all().stream().map(this::document).toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response one(@PathParam("id") UUID id) {
        Plan plan = plans.find(id).orElseThrow(NotFoundException::new);
        return Edition.of(document(plan), plan.version());
    }

    /** Drafts a plan; with {@code onSaleFrom} it is put on sale at once. */
    @POST
    public Response draft(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "plans " + body, () -> {
            Asked asked = Asked.of(body, json);
            PlanFacts facts = facts(asked, businesses.current().currency());
            LocalDate onSaleFrom = asked.dayOrNone("onSaleFrom");
            asked.nothingElse().understood();
            Plan plan = plans.draft(facts);
            if (onSaleFrom != null) {
                plan.putOnSale(onSaleFrom);
                plans.keep();
            }
            return Once.Answer.made("/api/v1/" + slug + "/plans/" + plan.id(), document(plan));
        });
    }

    /** Writes a plan anew on the edition that If-Match names. */
    @PUT
    @Path("{id}")
    public Response rewrite(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "plans " + id + body, () -> {
            Plan plan = plans.find(id).orElseThrow(NotFoundException::new);
            Edition.filledOn(ifMatch).mustBe(plan.version());
            Asked asked = Asked.of(body, json);
            PlanFacts facts = facts(asked, businesses.current().currency());
            asked.nothingElse().understood();
            plan.change(facts);
            plans.keep();
            return Once.Answer.done(document(plan));
        });
    }

    @POST
    @Path("{id}/sale")
    public Response putOnSale(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "plans sale " + id + body, () -> {
            Plan plan = plans.find(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            LocalDate from = asked.dayOrNone("from");
            asked.nothingElse().understood();
            plan.putOnSale(from == null ? today.day() : from);
            plans.keep();
            return Once.Answer.done(document(plan));
        });
    }

    private PlanFacts facts(Asked asked, Currency currency) {
        return new PlanFacts(
                asked.text("code", 40),
                new Wording(asked.text("nameEn", 120), asked.text("nameFr", 120)),
                asked.whole("visits", 0, 24),
                asked.money("price", currency),
                asked.value("discountPercent") == null
                        ? BigDecimal.ZERO
                        : asked.decimal("discountPercent", BigDecimal.ZERO, BigDecimal.valueOf(100)),
                asked.wholeOr("instalments", 1, 12, 1),
                asked.wholeOr("includedMinutes", 0, 100_000, 0),
                asked.yes("coversRepairs"),
                asked.each("tasks").stream().map(this::promise).toList(),
                asked.each("parts").stream().map(PlansApi::included).toList(),
                asked.each("extras").stream()
                        .map(extra -> extra(extra, currency))
                        .toList());
    }

    private PlanFacts.Promise promise(Asked asked) {
        String task = asked.text("task", 80);
        JsonNode cadence = asked.value("cadence");
        asked.nothingElse();
        return new PlanFacts.Promise(task, cadence == null ? null : cadence(cadence, asked));
    }

    private @Nullable Cadence cadence(JsonNode cadence, Asked asked) {
        try {
            return json.treeToValue(cadence, Cadence.class);
        } catch (com.fasterxml.jackson.core.JsonProcessingException | IllegalArgumentException notOne) {
            asked.refuse(changeover.contracts.words.Refusal.of("typed.cadence").at(asked.path() + "cadence"));
            return null;
        }
    }

    private static PlanFacts.Included included(Asked asked) {
        var included = new PlanFacts.Included(
                asked.text("part", 80), asked.decimal("quantity", new BigDecimal("0.01"), BigDecimal.valueOf(1000)));
        asked.nothingElse();
        return included;
    }

    private static PlanFacts.Extra extra(Asked asked, Currency currency) {
        var extra = new PlanFacts.Extra(
                asked.text("kind", 80), asked.whole("included", 0, 1000), asked.money("price", currency));
        asked.nothingElse();
        return extra;
    }

    private PlanDocument document(Plan plan) {
        PlanFacts facts = plan.facts();
        return new PlanDocument(
                plan.id(),
                facts.code(),
                facts.name(),
                facts.visits(),
                Amount.of(facts.price()),
                facts.discountPercent(),
                facts.instalments(),
                facts.includedMinutes(),
                facts.coversRepairs(),
                plan.onSaleFrom().orElse(null),
                plan.withdrawnOn().orElse(null),
                facts.tasks().stream()
                        .map(task -> new TaskDocument(
                                task.taskCode(), task.cadence() == null ? null : json.valueToTree(task.cadence())))
                        .toList(),
                facts.parts(),
                plan.version());
    }
}
