package changeover.billing.pricing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A price holds from its first day until a newer one begins; the day of the work decides. */
public record PriceBook(List<PriceEntry> entries) {

    /** The code of the ordinary hour of labour. */
    public static final String HOUR = "hour";

    /** The code of an hour of labour on a call outside the working hours. */
    public static final String AFTER_HOURS = "after-hours";

    /** The code of the ordinary trip to a home. */
    public static final String VISIT = "visit";

    /** The price in force on the day; empty while the item has none. */
    public Optional<PriceEntry> on(ItemKind kind, String code, LocalDate day) {
        return entries.stream()
                .filter(entry -> entry.kind() == kind && entry.code().equals(code))
                .filter(entry -> !entry.from().isAfter(day))
                .max(Comparator.comparing(PriceEntry::from));
    }
}
