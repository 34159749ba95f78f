package changeover.billing.tax;

import java.time.LocalDate;
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

    boolean holdsFor(TaxQuestion question) {
        return tax.region().equals(question.region())
                && !question.day().isBefore(from)
                && (until == null || !question.day().isAfter(until))
                && (property == null || property == question.property())
                && (work == null || work == question.work())
                && (form == null || form == question.form());
    }

    /** How much the row says about the case: a row for dwellings outranks a row for all property. */
    int precision() {
        return (property == null ? 0 : 1) + (work == null ? 0 : 1) + (form == null ? 0 : 1);
    }
}
