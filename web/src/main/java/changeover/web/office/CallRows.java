package changeover.web.office;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Became;
import changeover.scheduling.calls.CallLists;
import changeover.scheduling.calls.Risk;
import changeover.scheduling.calls.Urgency;
import changeover.scheduling.orders.OrderLists;
import changeover.scheduling.orders.OrderStanding;
import changeover.scheduling.orders.PartOrder;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Calls in a line, for the list and for the house card. */
@ApplicationScoped
public class CallRows {

    @Inject
    CallLists lists;

    @Inject
    OrderLists orders;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /**
     * A call in a line, everything in words.
     *
     * @param risks who is at risk, or empty
     * @param late whether it waits past its promise
     * @param became empty while nobody has answered it
     * @param part whether its visit waits for a part
     * @param day of the visit it became, or empty
     */
    public record Line(
            UUID id,
            UUID homeId,
            String home,
            String caller,
            String phone,
            String dial,
            String rang,
            String trouble,
            String risks,
            boolean life,
            String urgency,
            String promised,
            boolean late,
            boolean planned,
            boolean waits,
            String became,
            @Nullable UUID visitId,
            boolean part,
            String day,
            String technician) {}

    List<Line> waiting(Frame frame) {
        return lines(lists.waiting(), frame);
    }

    List<Line> over(Frame frame, int from, int count) {
        return lines(lists.over(from, count), frame);
    }

    List<Line> ofHome(Frame frame, UUID home, int count) {
        return lines(lists.ofHome(home, count), frame);
    }

    private List<Line> lines(List<CallLists.Row> rows, Frame frame) {
        ZoneId zone = businesses.current().zone();
        Instant now = today.now();
        Set<UUID> waiting =
                orders
                        .ofVisits(rows.stream()
                                .flatMap(row -> Stream.ofNullable(row.visitId()))
                                .toList())
                        .stream()
                        .filter(order ->
                                OrderStanding.of(order.facts(), frame.today()).isAwaited())
                        .map(PartOrder::visitId)
                        .collect(Collectors.toSet());
        return rows.stream()
                .map(row -> line(row, waiting.contains(row.visitId()), frame, zone, now))
                .toList();
    }

    private static Line line(CallLists.Row row, boolean part, Frame frame, ZoneId zone, Instant now) {
        String phone = row.phone() == null ? "" : row.phone();
        Became became = row.became();
        return new Line(
                row.id(),
                row.homeId(),
                row.home(),
                row.caller(),
                phone,
                dial(phone),
                inWords(row.rangAt(), frame, zone),
                row.trouble().wording().in(frame.locale()),
                risks(row.risks(), frame),
                row.urgency() == Urgency.LIFE,
                row.urgency().wording().in(frame.locale()),
                inWords(row.promisedBy(), frame, zone),
                row.waits() && row.waiting().isLate(now),
                row.planned(),
                row.waits(),
                became == null ? "" : became.wording().in(frame.locale()),
                row.visitId(),
                part,
                row.day() == null ? "" : frame.brief(row.day()) + (row.starts() == null ? "" : ", " + row.starts()),
                row.technician() == null ? "" : row.technician());
    }

    /** In the order in which they are asked. */
    static String risks(Set<Risk> risks, Frame frame) {
        return Arrays.stream(Risk.values())
                .filter(risks::contains)
                .map(risk -> risk.wording().in(frame.locale()))
                .collect(Collectors.joining(". "));
    }

    static String inWords(Instant at, Frame frame, ZoneId zone) {
        ZonedDateTime there = at.atZone(zone);
        LocalTime time = there.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
        return frame.brief(there.toLocalDate()) + ", " + time;
    }

    static String dial(String phone) {
        return phone.replaceAll("[^0-9+]", "");
    }
}
