package changeover.contracts.agreements;

import java.time.LocalDate;

/**
 * When an instalment's invoice may go out: on its day, but in Quebec a distance sale is paid before the service only by
 * credit card; without one nothing is asked before the first visit is closed.
 *
 * <p>Source: Consumer Protection Act (CQLR c. P-40.1), ss. 54.1 and following, as an Office de la protection du
 * consommateur note of 2007 reads them.
 *
 * @param notBefore first day on which it may be issued
 * @param awaitsFirstVisit whether the closing of the first visit must come first
 */
public record FirstIssueDay(LocalDate notBefore, boolean awaitsFirstVisit) {

    /**
     * @param place of the home, {@code CA-QC}
     * @param saleDay the day of the yes
     * @param instalmentDay the instalment's own day
     */
    public static FirstIssueDay of(
            String place, SaleChannel channel, boolean paidByCard, LocalDate saleDay, LocalDate instalmentDay) {
        boolean first = !instalmentDay.isAfter(saleDay);
        return new FirstIssueDay(first ? saleDay : instalmentDay, awaitsFirstVisit(place, channel, paidByCard));
    }

    private static boolean awaitsFirstVisit(String place, SaleChannel channel, boolean paidByCard) {
        return place.equals("CA-QC") && channel == SaleChannel.DISTANCE && !paidByCard;
    }
}
