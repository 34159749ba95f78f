package changeover.web.office;

import changeover.billing.costs.PlanCosts;
import changeover.billing.notices.OfferMail;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.CanItBeKept;
import changeover.contracts.agreements.Offer;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.agreements.Offers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
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

/** A plan is offered to a home; before it is, one sees what its year would be. */
@Path("/{slug}/homes/{home}/offer")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class OfferPages {

    /** A plan on sale. */
    public record Choice(UUID id, String name, String price) {}

    /** The answer before anything is offered. */
    public record Answer(
            boolean keeps,
            int visits,
            int minutes,
            String price,
            List<String> unkept,
            List<Gone> gone,
            @Nullable Cost cost) {}

    /**
     * What the year would cost to keep, for the owner alone.
     *
     * @param whole whether every cost is known
     */
    public record Cost(String amount, String left, boolean whole, boolean loses, UUID plan) {}

    public record Gone(String season, String next) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance offer(
                Frame frame, UUID home, String street, List<Choice> plans, Said form, @Nullable Answer answer);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    Plans plans;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    @Inject
    CanItBeKept kept;

    @Inject
    OfferMail mail;

    @Inject
    PlanCosts costs;

    /** The choice, and once a plan and a day are chosen what its year would be. */
    @GET
    @Transactional
    public TemplateInstance choose(
            @PathParam("home") UUID home,
            @Nullable @QueryParam("plan") String plan,
            @Nullable @QueryParam("from") String from) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        if (plan == null || from == null) {
            return page(home, Said.filled(Map.of("from", frame.today().toString())), null);
        }
        var chosen = new MultivaluedHashMap<String, String>();
        chosen.putSingle("plan", plan);
        chosen.putSingle("from", from);
        var typed = new Typed(chosen);
        try {
            Offer offer = wanted(home, typed, frame.today());
            return page(home, Said.filled(Map.of("plan", plan, "from", from)), answer(offer, frame));
        } catch (Refused refused) {
            return page(home, Said.again(typed, refused.refusals(), frame.locale()), null);
        }
    }

    @POST
    public Response offer(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Offer offer = wanted(home, typed, today.day());
                    UUID id = agreements.offer(offer).id();
                    mail.write(List.of(id));
                    return SaidOnce.at("/" + slug + "/agreements/" + id, "offered");
                },
                refusals -> page(home, Said.again(typed, refusals, frames.locale()), null));
    }

    private Answer answer(Offer offer, Frame frame) {
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
                year.gone().stream()
                        .map(gone -> new Gone(
                                gone.season().in(frame.locale()),
                                gone.next()
                                        .map(next -> frame.inWords(next.from()))
                                        .orElse("")))
                        .toList(),
                frame.role().equals("owner") ? cost(offer, frame) : null);
    }

    private @Nullable Cost cost(Offer offer, Frame frame) {
        return costs.of(offer.plan(), offer.homeId(), offer.term().from())
                .map(found -> {
                    Money left = offer.price().minus(found.cost().total());
                    return new Cost(
                            found.cost().total().format(frame.locale()),
                            left.format(frame.locale()),
                            found.cost().isWhole(),
                            left.isNegative(),
                            offer.planId());
                })
                .orElse(null);
    }

    private Offer wanted(UUID home, Typed typed, LocalDate today) {
        UUID plan = typed.id("plan");
        LocalDate from = typed.day("from");
        typed.understood();
        return offers.forHome(home, plan, from, today);
    }

    private TemplateInstance page(UUID home, Said form, @Nullable Answer answer) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        Home found = homes.get(home).orElseThrow(NotFoundException::new);
        List<Choice> choices = plans.onSale(frame.today()).stream()
                .map(plan -> new Choice(
                        plan.id(), plan.name().in(frame.locale()), plan.price().format(frame.locale())))
                .toList();
        return Pages.offer(frame, home, found.line(), choices, form, answer);
    }
}
