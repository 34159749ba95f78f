package changeover.web.field;

import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.orders.OrderLists;
import changeover.scheduling.orders.OrderStanding;
import changeover.scheduling.orders.PartOrder;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Frame;
import changeover.web.session.OrderChoices;
import changeover.web.session.Written;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Writes the parts of a visit as the technician reads them. */
@ApplicationScoped
class FieldParts {

    /** A part that was used; the operation takes it back. The serials are empty where nobody read one. */
    public record Used(String operation, String words, String oldSerial, String newSerial) {}

    /** @param standing in words; {@code late} where it should have come */
    public record Ordered(String words, String supplier, String expected, String standing, boolean late) {}

    /** @param over how the visit ended; empty while it is open */
    public record View(
            UUID visit,
            String home,
            boolean open,
            boolean orders,
            List<Used> used,
            List<Ordered> ordered,
            List<OrderChoices.Choice> parts,
            List<OrderChoices.Choice> machines,
            List<OrderChoices.Choice> places) {}

    @Inject
    Parts parts;

    @Inject
    OrderLists orders;

    @Inject
    OrderChoices choices;

    View of(VisitLists.Row row, StopLines.Lines lines, Frame frame) {
        return new View(
                row.id(),
                row.street() + ", " + row.city(),
                row.how() == null,
                row.how() == null || row.how().equals("closed"),
                new SheetSoFar(lines.said())
                        .parts().stream()
                                .map(said -> new Used(
                                        said.id().toString(),
                                        amount(SheetSoFar.text(said, "quantity"), frame) + " × "
                                                + name(SheetSoFar.text(said, "part"), frame),
                                        SheetSoFar.text(said, "oldSerial"),
                                        SheetSoFar.text(said, "newSerial")))
                                .toList(),
                ordered(row.id(), frame),
                choices.parts(frame.locale()),
                choices.machines(row.homeId()),
                choices.places());
    }

    List<Ordered> ordered(UUID visit, Frame frame) {
        return orders.ofVisits(List.of(visit)).stream()
                .map(order -> ordered(order, frame))
                .toList();
    }

    /** A part that came for one of the day's visits. @param place onto which it came */
    public record Along(String words, String place, String home) {}

    /** What came for these visits and is not in them yet: it goes along, whatever the lists of the tasks hold. */
    List<Along> along(Collection<UUID> visits, Frame frame) {
        return orders.ofVisits(visits).stream()
                .filter(order -> order.facts().kept().signum() > 0)
                .filter(order -> order.usedBy()
                        .filter(going -> going.ended() == null && visits.contains(going.visitId()))
                        .isPresent())
                .map(order -> new Along(
                        Written.of(order.facts().kept(), frame.locale()) + " × "
                                + order.part().in(frame.locale()),
                        order.liesAt() == null ? "" : order.liesAt(),
                        order.home()))
                .toList();
    }

    /** Of these visits those that wait for a part. */
    Set<UUID> waiting(List<UUID> visits, LocalDate today) {
        return orders.ofVisits(visits).stream()
                .filter(order -> OrderStanding.of(order.facts(), today).isAwaited())
                .map(PartOrder::visitId)
                .collect(Collectors.toSet());
    }

    private static Ordered ordered(PartOrder order, Frame frame) {
        OrderStanding stands = OrderStanding.of(order.facts(), frame.today());
        boolean ownWaits = stands == OrderStanding.PLANNED && !order.hasSecond();
        OrderStanding standing = ownWaits ? OrderStanding.HERE : stands;
        return new Ordered(
                Written.of(order.quantity(), frame.locale()) + " × "
                        + order.part().in(frame.locale()),
                order.supplier(),
                frame.brief(order.expectedOn()),
                standing.wording().in(frame.locale()),
                standing == OrderStanding.LATE);
    }

    private static String amount(String said, Frame frame) {
        return Written.of(new BigDecimal(said), frame.locale());
    }

    private String name(String code, Frame frame) {
        return parts.everKnown(code)
                .map(KnownPart::name)
                .map(name -> name.in(frame.locale()))
                .orElse(code);
    }
}
