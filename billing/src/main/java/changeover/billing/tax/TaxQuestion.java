package changeover.billing.tax;

import java.time.LocalDate;
import java.util.Locale;

/**
 * What decides a tax: where the work is done, on what, what it is, how it was agreed, and the day the tax becomes
 * payable, which is the earlier of the day paid and the invoice's date.
 *
 * @param region ISO 3166-2 of the service address, never of the billing address
 */
public record TaxQuestion(String region, PropertyUse property, Work work, ContractForm form, LocalDate day) {

    /** {@code CA} and {@code qc}, or {@code CA-QC} alone, are both {@code CA-QC}. */
    public static String region(String country, String region) {
        String upper = region.strip().toUpperCase(Locale.ROOT);
        return upper.matches("[A-Z]{2}-.+") ? upper : country.strip().toUpperCase(Locale.ROOT) + "-" + upper;
    }
}
