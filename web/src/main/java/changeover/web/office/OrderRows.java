package changeover.web.office;

import changeover.contracts.tenants.Businesses;
import changeover.scheduling.orders.NextStep;
import changeover.scheduling.orders.OrderLists;
import changeover.scheduling.orders.OrderStanding;
import changeover.scheduling.orders.PartOrder;
import changeover.web.session.Frame;
import changeover.web.session.Written;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Parts on order in a line: for their list, the visit, the home, the call. */
@ApplicationScoped
public class OrderRows {

    /**
     * An order in words.
     *
     * @param awaited whether the visit still waits for it
     * @param second the visit that was made to use it; null while there is none
     * @param own whether the visit that waits for it uses it, or has
     * @param told when and how the customer was told last, or empty
     */
    public record Line(
            UUID id,
            UUID homeId,
            String home,
            UUID visitId,
            String part,
            String quantity,
            String machine,
            String supplier,
            String expected,
            boolean late,
            boolean awaited,
            boolean over,
            String standing,
            String next,
            @Nullable UUID second,
            String secondDay,
            boolean own,
            String told) {}

    @Inject
    OrderLists lists;

    @Inject
    Businesses businesses;

    List<Line> open(Frame frame) {
        return lines(lists.open(), frame);
    }

    List<Line> over(Frame frame, int from, int count) {
        return lines(lists.over(from, count), frame);
    }

    List<Line> ofHome(Frame frame, UUID home) {
        return lines(lists.ofHome(home), frame);
    }

    List<Line> ofVisits(Frame frame, Collection<UUID> visits) {
        return lines(lists.ofVisits(visits), frame);
    }

    /** Of these visits those that wait for a part. */
    Set<UUID> waiting(Collection<UUID> visits, Frame frame) {
        return lists.ofVisits(visits).stream()
                .filter(order -> OrderStanding.of(order.facts(), frame.today()).isAwaited())
                .map(PartOrder::visitId)
                .collect(Collectors.toSet());
    }

    private List<Line> lines(List<PartOrder> orders, Frame frame) {
        return orders.stream().map(order -> line(order, frame)).toList();
    }

    Line line(PartOrder order, Frame frame) {
        OrderStanding standing = OrderStanding.of(order.facts(), frame.today());
        PartOrder.Going second = order.second();
        PartOrder.Told told = order.told();
        return new Line(
                order.id(),
                order.homeId(),
                order.home(),
                order.visitId(),
                order.part().in(frame.locale()),
                Written.of(order.quantity(), frame.locale()),
                order.machine() == null ? "" : order.machine(),
                order.supplier(),
                frame.brief(order.expectedOn()),
                standing == OrderStanding.LATE,
                standing.isAwaited(),
                standing.isOver(),
                standing.wording().in(frame.locale()),
                NextStep.of(order.facts(), frame.today()).wording().in(frame.locale()),
                second == null ? null : second.visitId(),
                second == null || second.day() == null ? "" : frame.brief(second.day()),
                !order.hasSecond() && order.own() != null,
                told == null
                        ? ""
                        : CallRows.inWords(
                                        told.at(), frame, businesses.current().zone()) + ", "
                                + told.how().wording().in(frame.locale()) + ", " + told.who());
    }
}
