package changeover.web.api;

import changeover.scheduling.orders.NextStep;
import changeover.scheduling.orders.OrderStanding;
import changeover.scheduling.orders.PartOrder;
import changeover.scheduling.orders.PartReturn;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A part on order as the API says it; quantities are decimal texts.
 *
 * @param standing late, coming, here, planned, used, gone_back or given_up
 * @param next ask, wait, tell, make_visit, give_day, go or nothing
 * @param secondVisit the visit that uses it, the latest
 */
public record OrderDocument(
        UUID id,
        UUID visit,
        UUID home,
        @Nullable UUID equipment,
        String part,
        String quantity,
        String supplier,
        LocalDate orderedOn,
        LocalDate expectedOn,
        @Nullable String words,
        int version,
        String arrived,
        @Nullable LocalDate arrivedOn,
        String returned,
        @Nullable ToldDocument told,
        @Nullable UUID secondVisit,
        @Nullable LocalDate secondDay,
        String standing,
        String next,
        List<ReturnDocument> returns) {

    /** @param how call, message or person */
    public record ToldDocument(Instant at, String how, String who, boolean here) {}

    /**
     * @param to null for the supplier
     * @param credit what was expected
     * @param answered null while the supplier owes an answer
     * @param credited null where it was refused or not answered
     */
    public record ReturnDocument(
            UUID id,
            UUID order,
            String quantity,
            String from,
            @Nullable String to,
            LocalDate day,
            String why,
            @Nullable String words,
            @Nullable Amount credit,
            @Nullable LocalDate answered,
            @Nullable Amount credited,
            @Nullable String answer) {}

    static OrderDocument of(PartOrder order, List<PartReturn> returns, LocalDate today) {
        PartOrder.Told told = order.told();
        PartOrder.Going second = order.second();
        return new OrderDocument(
                order.id(),
                order.visitId(),
                order.homeId(),
                order.equipmentId(),
                order.partCode(),
                order.quantity().toPlainString(),
                order.supplier(),
                order.orderedOn(),
                order.expectedOn(),
                order.words(),
                order.version(),
                order.arrived().toPlainString(),
                order.arrivedOn(),
                order.returned().toPlainString(),
                told == null ? null : new ToldDocument(told.at(), told.how().code(), told.who(), told.here()),
                second == null ? null : second.visitId(),
                second == null ? null : second.day(),
                OrderStanding.of(order.facts(), today).code(),
                NextStep.of(order.facts(), today).code(),
                returns.stream().map(OrderDocument::back).toList());
    }

    static ReturnDocument back(PartReturn one) {
        PartReturn.Answer answer = one.answer();
        return new ReturnDocument(
                one.id(),
                one.orderId(),
                one.quantity().toPlainString(),
                one.from(),
                one.to(),
                one.day(),
                one.why().code(),
                one.words(),
                one.credit() == null ? null : Amount.of(one.credit()),
                answer == null ? null : answer.day(),
                answer == null || answer.amount() == null ? null : Amount.of(answer.amount()),
                answer == null ? null : answer.words());
    }
}
