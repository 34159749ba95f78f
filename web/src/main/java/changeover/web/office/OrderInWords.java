package changeover.web.office;

import changeover.scheduling.orders.OrderFacts;
import changeover.scheduling.orders.OrderStanding;
import changeover.scheduling.orders.PartOrder;
import changeover.scheduling.orders.PartReturns;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Frame;
import changeover.web.session.OrderChoices;
import changeover.web.session.Written;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** One order as its page says it, with the forms that its standing asks for. */
@ApplicationScoped
public class OrderInWords {

    /**
     * @param visit the day of the visit that waits, or empty
     * @param rest what is still to come; empty for nothing
     * @param kept what came and is not gone back; empty for nothing
     * @param visitable whether its second visit may be made now
     */
    public record Sheet(
            OrderRows.Line line,
            String visit,
            String ordered,
            String by,
            String words,
            String arrived,
            String arrivedOn,
            String rest,
            String kept,
            String givenUp,
            boolean visitable,
            int version,
            UUID operation,
            List<OrderChoices.Choice> places,
            List<ReturnsInWords.Line> returns) {}

    @Inject
    OrderRows rows;

    @Inject
    OrderChoices choices;

    @Inject
    PartReturns returns;

    @Inject
    ReturnsInWords returnsInWords;

    @Inject
    VisitLists visits;

    @Inject
    StockPlaces places;

    Sheet of(PartOrder order, Frame frame) {
        OrderFacts facts = order.facts();
        boolean over = OrderStanding.of(facts, frame.today()).isOver();
        PartOrder.Ending givenUp = order.givenUp();
        return new Sheet(
                rows.line(order, frame),
                visits.one(order.visitId())
                        .map(one -> one.endedOn() != null ? one.endedOn() : one.day())
                        .map(frame::brief)
                        .orElse(""),
                frame.inWords(order.orderedOn()),
                order.orderedBy(),
                order.words() == null ? "" : order.words(),
                order.arrived().signum() == 0 ? "" : Written.of(order.arrived(), frame.locale()),
                order.arrivedOn() == null ? "" : frame.inWords(order.arrivedOn()),
                facts.rest().signum() == 0 ? "" : Written.of(facts.rest(), frame.locale()),
                facts.kept().signum() == 0 ? "" : Written.of(facts.kept(), frame.locale()),
                givenUp == null ? "" : frame.inWords(givenUp.day()) + ", " + givenUp.why(),
                !over && !order.hasSecond(),
                order.version(),
                UUID.randomUUID(),
                choices.places(),
                returns.ofOrder(order.id()).stream()
                        .map(one -> returnsInWords.line(one, frame))
                        .toList());
    }

    /** What its forms hold before anybody types. */
    Map<String, String> filled(PartOrder order, Frame frame) {
        OrderFacts facts = order.facts();
        Map<String, String> known = new HashMap<>();
        known.put("arrived", facts.rest().signum() == 0 ? "" : Written.of(facts.rest(), frame.locale()));
        known.put("expected", order.expectedOn().toString());
        known.put("how", "call");
        known.put("minutes", "60");
        known.put("back", facts.kept().signum() == 0 ? "" : Written.of(facts.kept(), frame.locale()));
        places.shelf().ifPresent(shelf -> known.put("place", shelf.id().toString()));
        return known;
    }
}
