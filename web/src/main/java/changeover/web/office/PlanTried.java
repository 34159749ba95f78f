package changeover.web.office;

import changeover.contracts.agreements.CanItBeKept;
import changeover.contracts.agreements.Offer;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.agreements.PlanForHome;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.OwnCatalogue.Own;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.FoundHome;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.plans.PlanFacts;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A plan is tried on a home before anybody buys it: whether so many visits keep its promises for those machines, what is
 * missing, and what a year of it takes. The home's past is not asked: every interval counts from today.
 */
@ApplicationScoped
public class PlanTried {

    /** A home that it can be tried on. */
    public record Choice(UUID id, String street, String customer) {}

    /** What came of it. */
    public record Answer(
            UUID home,
            String street,
            int machines,
            int promises,
            int sold,
            int needed,
            int minutes,
            boolean keeps,
            List<Missing> missing,
            List<PartLine> parts) {}

    /** A promise that no visit keeps. */
    public record Missing(String task, String machine, String first, String last, String why) {}

    public record PartLine(String words, String quantity) {}

    @Inject
    Homes homes;

    @Inject
    AllEquipment machines;

    @Inject
    CanItBeKept kept;

    /** A few homes, of those that the text finds. */
    List<Choice> choices(String text) {
        return homes.find(text, 8).stream().map(PlanTried::choice).toList();
    }

    private static Choice choice(FoundHome home) {
        return new Choice(
                home.id(),
                home.unitLabel() == null ? home.street() : home.street() + ", " + home.unitLabel(),
                home.customer() == null ? home.city() : home.customer());
    }

    Answer on(UUID homeId, PlanFacts plan, Own own, Frame frame) {
        Home home = homes.get(homeId).orElseThrow(NotFoundException::new);
        List<Equipment> units = machines.ofHome(homeId);
        List<Offer.Promised> promises = PlanForHome.promises(
                plan,
                units.stream()
                        .map(unit -> new PlanForHome.Unit(unit.id(), unit.kind(), unit.fits()))
                        .toList(),
                own.catalogue(),
                own.intervals());
        OfferForecast year = kept.forecast(null, Term.ofYear(frame.today()), plan.visits(), promises);
        Map<UUID, Equipment> byId = units.stream().collect(Collectors.toMap(Equipment::id, Function.identity()));
        Locale locale = frame.locale();
        return new Answer(
                homeId,
                home.line(),
                units.size(),
                promises.size(),
                plan.visits(),
                year.needed(),
                year.minutes(),
                year.unkept().isEmpty(),
                year.unkept().stream().map(one -> missing(one, byId, frame)).toList(),
                year.parts().stream()
                        .map(part -> new PartLine(
                                own.catalogue()
                                        .findPart(part.partKind())
                                        .map(kind -> kind.wording().in(locale))
                                        .orElse(part.partKind()),
                                PlanForm.plain(part.quantity(), locale)))
                        .toList());
    }

    private static Missing missing(OfferForecast.NotKept one, Map<UUID, Equipment> byId, Frame frame) {
        @Nullable Equipment machine = one.equipmentId() == null ? null : byId.get(one.equipmentId());
        return new Missing(
                one.task().in(frame.locale()),
                machine == null ? "" : machine.name(),
                frame.inWords(one.window().from()),
                frame.inWords(one.window().last()),
                one.why().in(frame.locale()));
    }
}
