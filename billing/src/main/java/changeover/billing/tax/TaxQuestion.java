package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;

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

    /** Every case that a place can be asked about on a day. */
    static Stream<TaxQuestion> everyCase(String region, LocalDate day) {
        return Arrays.stream(PropertyUse.values())
                .flatMap(property -> Arrays.stream(Work.values())
                        .flatMap(work -> Arrays.stream(ContractForm.values())
                                .map(form -> new TaxQuestion(region, property, work, form, day))));
    }

    Wording inWords() {
        return new Wording(
                String.join(
                        ", ",
                        property.wording().en(),
                        work.wording().en(),
                        form.wording().en()),
                String.join(
                        ", ",
                        property.wording().fr(),
                        work.wording().fr(),
                        form.wording().fr()));
    }
}
