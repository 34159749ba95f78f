package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A tax holds in a place, between two days, for the kinds of property, work and contract that its row names; a part left
 * open (null) holds for all.
 *
 * @param until the last day, or null while it has none
 */
public record TaxRow(
        Tax tax,
        @Nullable PropertyUse property,
        @Nullable Work work,
        @Nullable ContractForm form,
        LocalDate from,
        @Nullable LocalDate until) {

    private static final String ANY = "any";

    /** On a tie of all else the building decides before the work, and the work before the contract. */
    private static final Comparator<TaxRow> RANK = Comparator.comparingInt(TaxRow::precision)
            .thenComparing(TaxRow::from)
            .thenComparing((TaxRow row) -> row.property != null)
            .thenComparing((TaxRow row) -> row.work != null);

    /** Names the row in forms and documents: {@code CA-ON hst 2010-07-01 any any any}. */
    public String key() {
        return String.join(" ", tax.region(), tax.code(), from.toString(), propertyCode(), workCode(), formCode());
    }

    String propertyCode() {
        return property == null ? ANY : property.code();
    }

    String workCode() {
        return work == null ? ANY : work.code();
    }

    String formCode() {
        return form == null ? ANY : form.code();
    }

    /** What it holds for, in words; empty when it holds for all. */
    public Wording cases() {
        List<Wording> named = Stream.of(
                        property == null ? null : property.wording(),
                        work == null ? null : work.wording(),
                        form == null ? null : form.wording())
                .filter(Objects::nonNull)
                .toList();
        return new Wording(
                named.stream().map(Wording::en).collect(Collectors.joining(", ")),
                named.stream().map(Wording::fr).collect(Collectors.joining(", ")));
    }

    boolean holdsFor(TaxQuestion question) {
        return holdsIn(question.region(), question.day())
                && (property == null || property == question.property())
                && (work == null || work == question.work())
                && (form == null || form == question.form());
    }

    /** Whether it holds there on that day, for whatever case. */
    boolean holdsIn(String region, LocalDate day) {
        return tax.region().equals(region) && !day.isBefore(from) && (until == null || !day.isAfter(until));
    }

    /** Whether there is a day on which both hold in one place. */
    boolean meets(TaxRow other) {
        return holdsIn(other.tax.region(), other.from) || other.holdsIn(tax.region(), from);
    }

    /** Of two rows of one tax that hold, the one that says more of the case is used, and of such the one that began last. */
    boolean outranks(TaxRow other) {
        return RANK.compare(this, other) > 0;
    }

    /** How much the row says about the case: a row for dwellings outranks a row for all property. */
    private int precision() {
        return (property == null ? 0 : 1) + (work == null ? 0 : 1) + (form == null ? 0 : 1);
    }
}
