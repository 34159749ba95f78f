package changeover.billing.pricing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A price holds from its first day until a newer one begins; the day of the work decides.
 *
 * @param terms how minutes are counted, each from its day on
 */
public record PriceBook(List<PriceEntry> entries, List<LabourTerms> terms) {

    /** The code of the ordinary hour of labour. */
    public static final String HOUR = "hour";

    /** The code of an hour of labour on a call outside the working hours. */
    public static final String AFTER_HOURS = "after-hours";

    /** Such an hour on a Saturday or a Sunday, where it has a rate of its own. */
    public static final String WEEKEND = "weekend";

    /** Such an hour on a holiday of the place, where it has a rate of its own. */
    public static final String HOLIDAY = "holiday";

    /** Every code of labour, as it stands in the book. */
    public static final List<String> LABOUR = List.of(HOUR, AFTER_HOURS, WEEKEND, HOLIDAY);

    /** The code of the ordinary trip to a home. */
    public static final String VISIT = "visit";

    /** The code of a trip that ended at a closed door. */
    public static final String NO_ACCESS = "no-access";

    public PriceBook(List<PriceEntry> entries) {
        this(entries, List.of());
    }

    /** What was written, with the mark-up rules that make prices of costs. */
    public static PriceBook of(List<PriceRow> rows, MarkUps rules, List<LabourTerms> terms) {
        return new PriceBook(MarkedUp.entries(rows, rules), terms);
    }

    /** The price in force on the day; empty while the item has none. */
    public Optional<PriceEntry> on(ItemKind kind, String code, LocalDate day) {
        return entries.stream()
                .filter(entry -> entry.kind() == kind && entry.code().equals(code))
                .filter(entry -> !entry.from().isAfter(day))
                .max(Comparator.comparing(PriceEntry::from));
    }

    /** How minutes are counted on that day. */
    public LabourTerms termsOn(LocalDate day) {
        return terms.stream()
                .filter(one -> !one.from().isAfter(day))
                .max(Comparator.comparing(LabourTerms::from))
                .orElse(LabourTerms.USUAL);
    }

    /** Every price in force on the day, by kind and code. */
    public List<PriceEntry> asOf(LocalDate day) {
        return entries.stream()
                .filter(entry -> !entry.from().isAfter(day))
                .collect(Collectors.toMap(
                        PriceEntry::item, entry -> entry, BinaryOperator.maxBy(Comparator.comparing(PriceEntry::from))))
                .values()
                .stream()
                .sorted(Comparator.comparing(PriceEntry::kind).thenComparing(PriceEntry::code))
                .toList();
    }

    /** Of each item the first price that begins after the day. */
    public Map<PriceRow.Item, PriceEntry> nextAfter(LocalDate day) {
        return entries.stream()
                .filter(entry -> entry.from().isAfter(day))
                .collect(Collectors.toMap(
                        PriceEntry::item,
                        entry -> entry,
                        BinaryOperator.minBy(Comparator.comparing(PriceEntry::from))));
    }

    /** The days after this one on which something changes, the nearest first. */
    public List<LocalDate> changesAfter(LocalDate day) {
        return Stream.concat(
                        entries.stream().map(PriceEntry::from), terms.stream().map(LabourTerms::from))
                .filter(day::isBefore)
                .distinct()
                .sorted()
                .toList();
    }
}
