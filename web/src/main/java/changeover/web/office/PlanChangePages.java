package changeover.web.office;

import changeover.billing.ledger.Settlement;
import changeover.billing.ledger.Settlements;
import changeover.billing.notices.OfferMail;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.CanItBeKept;
import changeover.contracts.agreements.Offer;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.agreements.PlanChanges;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Another plan in mid-term: before it is offered one sees its year, and what goes back of the present one. */
@Path("/{slug}/agreements/{id}/plan-change")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PlanChangePages {

    /** A plan on sale. */
    public record Choice(UUID id, String name, String price) {}

    /** The agreement in hand. */
    public record View(UUID id, int number, String plan, String home, String term, String price, List<Choice> plans) {}

    /**
     * The answer before anything is offered.
     *
     * @param old what becomes of the present agreement; null where nothing was ever asked for it
     */
    public record Answer(
            boolean keeps,
            int visits,
            int minutes,
            String price,
            List<String> unkept,
            @Nullable Old old) {}

    /** @param stillToBill empty when nothing is */
    public record Old(String kept, String credit, String total, String stillToBill) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance planchange(Frame frame, View view, Said form, @Nullable Answer answer);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Agreements agreements;

    @Inject
    PlanChanges changes;

    @Inject
    Plans plans;

    @Inject
    Homes homes;

    @Inject
    CanItBeKept kept;

    @Inject
    Settlements settlements;

    @Inject
    OfferMail mail;

    /** The choice, and once a plan and a day are chosen what would become of both agreements. */
    @GET
    @Transactional
    public TemplateInstance choose(
            @PathParam("id") UUID id,
            @Nullable @QueryParam("plan") String plan,
            @Nullable @QueryParam("from") String from) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        found(id);
        if (plan == null || from == null) {
            return page(id, Said.filled(Map.of("from", frame.today().toString())), null);
        }
        var chosen = new MultivaluedHashMap<String, String>();
        chosen.putSingle("plan", plan);
        chosen.putSingle("from", from);
        var typed = new Typed(chosen);
        try {
            UUID wanted = typed.id("plan");
            LocalDate day = typed.day("from");
            typed.understood();
            Answer answer = answer(id, changes.wanted(id, wanted, day, frame.today()), frame);
            return page(id, Said.filled(Map.of("plan", plan, "from", from)), answer);
        } catch (Refused refused) {
            return page(id, Said.again(typed, refused.refusals(), frame.locale()), null);
        }
    }

    @POST
    public Response offer(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(id);
                    UUID plan = typed.id("plan");
                    LocalDate from = typed.day("from");
                    typed.understood();
                    UUID made = changes.offer(id, plan, from, today.day()).id();
                    mail.write(List.of(made));
                    return SaidOnce.at("/" + slug + "/agreements/" + made, "offered");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale()), null));
    }

    private Answer answer(UUID old, Offer offer, Frame frame) {
        OfferForecast year =
                kept.forecast(offer.homeId(), offer.term(), offer.plan().visits(), offer.promises());
        return new Answer(
                year.keepsEverything(),
                year.visits().size(),
                year.minutes(),
                offer.price().format(frame.locale()),
                year.unkept().stream()
                        .map(one ->
                                one.task().in(frame.locale()) + ": " + one.why().in(frame.locale()))
                        .toList(),
                settlements
                        .of(old, offer.term().from())
                        .map(settlement -> old(settlement, frame))
                        .orElse(null));
    }

    private static Old old(Settlement settlement, Frame frame) {
        Settlement.Way way = settlement.ways().stream()
                .filter(Settlement.Way::chosen)
                .findFirst()
                .orElseThrow();
        return new Old(
                way.kept().format(frame.locale()),
                way.credit().format(frame.locale()),
                way.total().format(frame.locale()),
                way.stillToBill().isZero() ? "" : way.stillToBill().format(frame.locale()));
    }

    private Agreement found(UUID id) {
        return agreements.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, Said form, @Nullable Answer answer) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        Agreement agreement = found(id);
        List<Choice> choices = plans.onSale(frame.today()).stream()
                .filter(plan -> !plan.id().equals(agreement.planId()))
                .map(plan -> new Choice(
                        plan.id(), plan.name().in(frame.locale()), plan.price().format(frame.locale())))
                .toList();
        View view = new View(
                id,
                agreement.number(),
                agreement.planName().in(frame.locale()),
                homes.get(agreement.homeId()).map(Home::line).orElse(""),
                frame.brief(agreement.term().from()) + " – "
                        + frame.brief(agreement.term().last()),
                agreement.price().format(frame.locale()),
                choices);
        return Pages.planchange(frame, view, form, answer);
    }
}
