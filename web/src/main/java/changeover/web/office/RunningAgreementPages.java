package changeover.web.office;

import changeover.contracts.agreements.RunningAgreement;
import changeover.contracts.agreements.TakenOverAgreements.InForce;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.Businesses;
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
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An agreement that ran before the take-over, entered by hand: its own first day and price, what was paid, what was done. */
@Path("/{slug}/homes/{home}/running-agreement")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class RunningAgreementPages {

    public record Choice(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance runningagreement(
                Frame frame, UUID home, String street, List<Choice> plans, String takeOver, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    Plans plans;

    @Inject
    TakeOver takeOver;

    @Inject
    RunningAgreement running;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance page(@PathParam("home") UUID home) {
        return page(home, Said.filled(Map.of("rest", "old")));
    }

    @POST
    public Response keep(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(home);
                    LocalDate day = takeOver.dayOrToday();
                    InForce one = read(home, typed);
                    typed.understood();
                    takeOver.on(day);
                    return SaidOnce.at("/" + slug + "/agreements/" + running.takeOver(one, day), "kept");
                },
                refusals -> page(home, Said.again(typed, refusals, frames.locale())));
    }

    private InForce read(UUID home, Typed typed) {
        Currency currency = businesses.current().currency();
        Set<String> codes = plans.all().stream().map(Plan::code).collect(Collectors.toSet());
        if (codes.isEmpty()) {
            throw Refusal.of("agreement.plan-unknown").at("plan").thrown();
        }
        String plan = typed.oneOf("plan", codes);
        LocalDate from = typed.day("from");
        Money price = typed.money("price", currency);
        @Nullable Money paid = typed.line("paid", 40) == null ? null : typed.money("paid", currency);
        @Nullable Integer visits = typed.line("visitsDone", 4) == null ? null : typed.whole("visitsDone", 0, 24);
        LocalDate last = typed.dayOrNone("lastVisit");
        boolean asks = typed.oneOf("rest", Set.of("old", "ask")).equals("ask");
        if (asks && paid == null) {
            typed.refuse(Refusal.of("oldsheet.paid-missing").at("paid"));
        }
        Money nought = Money.zero(currency);
        Money rest = asks && paid != null ? price.minus(paid).aboveNought() : nought;
        return new InForce(home, plan, from, price, paid, rest, visits, last);
    }

    private TemplateInstance page(UUID home, Said form) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        return Pages.runningagreement(
                frame,
                home,
                found(home).line(),
                plans.all().stream()
                        .map(plan -> new Choice(
                                plan.code(),
                                plan.name().in(frame.locale()) + ", "
                                        + plan.price().format(frame.locale())))
                        .toList(),
                frame.inWords(takeOver.dayOrToday()),
                form);
    }

    private Home found(UUID home) {
        return homes.get(home).orElseThrow(NotFoundException::new);
    }
}
