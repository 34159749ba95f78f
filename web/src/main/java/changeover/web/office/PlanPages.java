package changeover.web.office;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnCatalogue.Own;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
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
import jakarta.ws.rs.DefaultValue;
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
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** The business's plans: written, tried on a home, put on sale, withdrawn. */
@Path("/{slug}/plans")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PlanPages {

    /** A plan in the list. */
    public record Row(UUID id, String name, int visits, String price, Standing standing) {}

    /** @param how draft, announced, sold or withdrawn; and since or from which day */
    public record Standing(String how, String day) {}

    /** @param day that stands in the field of the sale, as typed or today */
    public record Kept(UUID id, String name, int version, Standing standing, String day) {}

    /** The side of the page where the plan is tried; an answer once a home was chosen. */
    public record Trial(String asked, List<PlanTried.Choice> homes, PlanTried.@Nullable Answer answer) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance plans(Frame frame, List<Row> rows);

        static native TemplateInstance plan(
                Frame frame, Said form, PlanChoices choices, @Nullable Kept kept, @Nullable Trial trial);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Plans plans;

    @Inject
    OwnCatalogue trade;

    @Inject
    Businesses businesses;

    @Inject
    PlanTried tried;

    @GET
    @Transactional
    public TemplateInstance list() {
        Frame frame = frames.of(Tab.PLANS);
        return Pages.plans(
                frame,
                plans.all().stream()
                        .map(plan -> new Row(
                                plan.id(),
                                plan.name().in(frame.locale()),
                                plan.visits(),
                                plan.price().format(frame.locale()),
                                standing(plan, frame)))
                        .toList());
    }

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write() {
        return blankPage(PlanForm.blank());
    }

    @POST
    @Path("new")
    public Response draft(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Plan plan = plans.draft(PlanForm.facts(
                            typed, trade.catalogue(), businesses.current().currency(), null));
                    return SaidOnce.at("/" + slug + "/plans/" + plan.id(), "kept");
                },
                refusals -> blankPage(Said.again(typed, placed(refusals), frames.locale())));
    }

    @GET
    @Path("{id}")
    @Transactional
    public TemplateInstance read(
            @PathParam("id") UUID id,
            @QueryParam("q") @DefaultValue("") String asked,
            @Nullable @QueryParam("home") UUID home) {
        Plan plan = found(id);
        Frame frame = frames.of(Tab.PLANS);
        return page(plan, PlanForm.filled(plan.facts(), frame.locale()), plan.version(), frame, asked.strip(), home);
    }

    @POST
    @Path("{id}")
    public Response change(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    Plan plan = found(id);
                    var facts = PlanForm.facts(
                            typed, trade.catalogue(), businesses.current().currency(), plan.facts());
                    new FilledOn(version).mustBe(plan.version());
                    plan.change(facts);
                    plans.keep();
                    return SaidOnce.at("/" + slug + "/plans/" + id, "kept");
                },
                refusals -> {
                    Plan plan = found(id);
                    Said again = Said.again(typed, placed(refusals), frames.locale());
                    return page(plan, again, plan.version(), frames.of(Tab.PLANS), "", null);
                });
    }

    @POST
    @Path("{id}/sale")
    public Response putOnSale(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return on(slug, id, fields, Plan::putOnSale);
    }

    @POST
    @Path("{id}/withdrawal")
    public Response withdraw(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        return on(slug, id, fields, Plan::withdraw);
    }

    private Response on(String slug, UUID id, MultivaluedMap<String, String> fields, BiConsumer<Plan, LocalDate> verb) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Plan plan = found(id);
                    LocalDate day = typed.day("day");
                    typed.understood();
                    verb.accept(plan, day);
                    plans.keep();
                    return SaidOnce.at("/" + slug + "/plans/" + id, "kept");
                },
                refusals -> {
                    Plan plan = found(id);
                    Frame frame = frames.of(Tab.PLANS);
                    Said again = Said.again(typed, refusals, frame.locale());
                    var values = new HashMap<>(
                            PlanForm.filled(plan.facts(), frame.locale()).values());
                    values.putAll(again.values());
                    return page(plan, new Said(values, again.errors(), again.top()), plan.version(), frame, "", null);
                });
    }

    private TemplateInstance blankPage(Said form) {
        Frame frame = frames.of(Tab.PLANS);
        return Pages.plan(frame, form, PlanChoices.of(trade.read(), null, frame.locale()), null, null);
    }

    private TemplateInstance page(Plan plan, Said form, int version, Frame frame, String asked, @Nullable UUID home) {
        Own own = trade.read();
        var facts = plan.facts();
        String day = form.value("day").isEmpty() ? frame.today().toString() : form.value("day");
        return Pages.plan(
                frame,
                form,
                PlanChoices.of(own, facts, frame.locale()),
                new Kept(plan.id(), plan.name().in(frame.locale()), version, standing(plan, frame), day),
                new Trial(
                        asked,
                        tried.choices(asked.length() > 100 ? asked.substring(0, 100) : asked),
                        home == null ? null : tried.on(home, facts, own, frame)));
    }

    private Plan found(UUID id) {
        return plans.find(id).orElseThrow(NotFoundException::new);
    }

    /** What the database says of the code is said at the code. */
    private static List<Refusal> placed(List<Refusal> refusals) {
        return refusals.stream()
                .map(one -> one.code().equals("constraint.plan_code_taken") ? one.at("code") : one)
                .toList();
    }

    private static Standing standing(Plan plan, Frame frame) {
        LocalDate today = frame.today();
        if (plan.withdrawnOn().isPresent()) {
            return new Standing("withdrawn", frame.inWords(plan.withdrawnOn().get()));
        }
        return plan.onSaleFrom()
                .map(from -> new Standing(plan.isOnSale(today) ? "sold" : "announced", frame.inWords(from)))
                .orElse(new Standing("draft", ""));
    }
}
