package changeover.scheduling.orders;

import changeover.contracts.calendar.Window;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * The second visit of a part answers the first, begins no earlier than everything is expected to be here, and is charged like any visit
 * that no plan promised; after a free return it is free again.
 */
final class SecondVisit {

    /** How long its window stays open where nobody says otherwise. */
    static final int DAYS = 14;

    private SecondVisit() {}

    /** @param home in which the first one's lives on */
    static NewVisit of(Visit first, UUID home, List<PartOrder> orders, Window window, int minutes, Locale locale) {
        VisitKind kind = first.kind() == VisitKind.RETURN ? VisitKind.RETURN : VisitKind.EXTRA;
        return new NewVisit(home, null, kind, window, minutes, first.id(), note(orders, locale), List.of());
    }

    /** The first day on which everything should be here. */
    static LocalDate earliest(List<PartOrder> orders, LocalDate today) {
        return orders.stream()
                .filter(order -> order.facts().rest().signum() > 0)
                .map(PartOrder::expectedOn)
                .filter(today::isBefore)
                .max(LocalDate::compareTo)
                .orElse(today);
    }

    private static String note(List<PartOrder> orders, Locale locale) {
        boolean french = "fr".equals(locale.getLanguage());
        String parts = orders.stream()
                .map(order -> order.part().in(locale) + " ("
                        + order.quantity().stripTrailingZeros().toPlainString().replace('.', french ? ',' : '.') + ")")
                .collect(Collectors.joining(", "));
        return (french ? "Deuxième visite, avec : " : "Second visit, with: ") + parts;
    }
}
