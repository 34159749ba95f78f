package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Published figures that the tax table must reproduce, each with its source. */
class DocumentTaxesOutsideTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    /** Revenu Québec, "Calculating the Taxes": 100.00 gives GST 5.00 and QST 9.98, 114.98 in all. */
    @Test
    void revenu_quebecs_own_example() {
        check("CA-QC", DAY, "100.00", "gst 5.00, qst 9.98 = 114.98");
    }

    /**
     * The same page: only fractions of half a cent and more become a cent. On these amounts the QST falls on an exact half
     * cent; rounding half to even would give another cent at 60, 140, 220, 300, 380 and 460.
     */
    @Test
    void a_half_cent_becomes_a_cent() {
        check("CA-QC", DAY, "140.00", "gst 7.00, qst 13.97 = 160.97");
        check("CA-QC", DAY, "60.00", "gst 3.00, qst 5.99 = 68.99");
        check("CA-QC", DAY, "180.00", "gst 9.00, qst 17.96 = 206.96");
        check("CA-QC", DAY, "220.00", "gst 11.00, qst 21.95 = 252.95");
        check("CA-QC", DAY, "300.00", "gst 15.00, qst 29.93 = 344.93");
        check("CA-QC", DAY, "380.00", "gst 19.00, qst 37.91 = 436.91");
        check("CA-QC", DAY, "460.00", "gst 23.00, qst 45.89 = 528.89");
        check("CA-QC", DAY, "20.00", "gst 1.00, qst 2.00 = 23.00");
    }

    /** Computed by hand from the same page's rules: two steps, each on the price before tax. */
    @Test
    void two_steps_on_the_price_before_tax() {
        check("CA-QC", DAY, "249.00", "gst 12.45, qst 24.84 = 286.29");
        check("CA-QC", DAY, "189.00", "gst 9.45, qst 18.85 = 217.30");
        check("CA-QC", DAY, "100.07", "gst 5.00, qst 9.98 = 115.05");
        check("CA-QC", DAY, "189.50", "gst 9.48, qst 18.90 = 217.88");
    }

    /** On the document's total, not by line: the lines' own taxes would add up to 2.67 and 5.30. */
    @Test
    void taxes_are_computed_on_the_documents_total() {
        check("CA-QC", DAY, "19.95 24.90 8.35", "gst 2.66, qst 5.31 = 61.17");
    }

    /** Nova Scotia's rate fell from 15 to 14 % on 2025-04-01 (notes on the change, secondary). */
    @Test
    void nova_scotias_rate_changed_with_the_day() {
        check("CA-NS", LocalDate.of(2025, 3, 31), "249.00", "hst 37.35 = 286.35");
        check("CA-NS", LocalDate.of(2025, 4, 1), "249.00", "hst 34.86 = 283.86");
    }

    /** HST by province on 2026-01-01, from memory: 13 % in Ontario, 15 % in the others that have it. */
    @Test
    void the_harmonized_provinces() {
        check("CA-ON", DAY, "249.00", "hst 32.37 = 281.37");
        check("CA-NB", DAY, "249.00", "hst 37.35 = 286.35");
        check("CA-NL", DAY, "249.00", "hst 37.35 = 286.35");
        check("CA-PE", DAY, "249.00", "hst 37.35 = 286.35");
    }

    /**
     * GST alone is 5 %; PST is 7 % in British Columbia, 6 % in Saskatchewan, 7 % in Manitoba (provincial tax offices, from
     * memory: such a row is shown and never issued until an owner has read it).
     */
    @Test
    void the_other_provinces_and_the_territories() {
        for (String region : List.of("CA-AB", "CA-NT", "CA-NU", "CA-YT")) {
            check(region, DAY, "249.00", "gst 12.45 = 261.45");
        }
        check("CA-BC", DAY, "249.00", "gst 12.45, pst 17.43 = 278.88");
        check("CA-SK", DAY, "249.00", "gst 12.45, pst 14.94 = 276.39");
        check("CA-MB", DAY, "249.00", "gst 12.45, pst 17.43 = 278.88");
        for (TaxRow row : ShippedTaxes.rows()) {
            boolean read = List.of("CA-QC", "CA-NS").contains(row.tax().region());
            assertEquals(read || row.tax().category().equals("O"), row.tax().read(), row.key());
        }
    }

    /** A place without a row, or a day before its first, is a refusal and never nought. */
    @Test
    void an_unknown_place_is_refused() {
        check("US-CA", DAY, "249.00", "tax.place-unknown");
        check("FR-IDF", DAY, "249.00", "tax.place-unknown");
        check("CA-QC", LocalDate.of(2012, 12, 31), "249.00", "tax.place-unknown");
    }

    /**
     * New York taxes the whole annual contract for heating and cooling even if no visit occurs (20 NYCRR 527.7, example 8):
     * 249.00 at 8.875 % is 22.10; a capital improvement is exempt with the customer's certificate (Publication 862). Texas:
     * a residential plan is not taxed, nor is scheduled maintenance of other property; its repair is (34 TAC 3.291, 3.357).
     */
    @Test
    void two_states_that_treat_the_same_plan_oppositely() {
        state("US-NY", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN, "ny_sales 22.10 = 271.10");
        state("US-NY", PropertyUse.COMMERCIAL, Work.REPAIR, ContractForm.SEPARATE, "ny_sales 22.10 = 271.10");
        state("US-NY", PropertyUse.RESIDENTIAL, Work.INSTALLATION, ContractForm.LUMP_SUM, "ny_sales 0.00 = 249.00");
        state("US-TX", PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN, "tx_sales 0.00 = 249.00");
        state("US-TX", PropertyUse.RESIDENTIAL, Work.REPAIR, ContractForm.LUMP_SUM, "tx_sales 0.00 = 249.00");
        state("US-TX", PropertyUse.RESIDENTIAL, Work.REPAIR, ContractForm.SEPARATE, "tax.case-unknown");
        state("US-TX", PropertyUse.COMMERCIAL, Work.MAINTENANCE, ContractForm.PLAN, "tx_sales 0.00 = 249.00");
        state("US-TX", PropertyUse.COMMERCIAL, Work.REPAIR, ContractForm.SEPARATE, "tx_sales 20.54 = 269.54");
    }

    private static void state(String region, PropertyUse use, Work work, ContractForm form, String expected) {
        Taxable line = new Taxable(1, region, use, work, form, Money.of("249.00", "USD"));
        assertEquals(expected, said(List.of(line), DAY, new TaxTable(ShippedTaxes.rows(), List.of())));
    }

    /**
     * 34 TAC 3.357(b)(9): of one price, taxable work of 5 % or less leaves all of it untaxed, more taxes all of it, unless
     * papers show the split; where no place presumes anything the split itself counts.
     */
    @Test
    void one_price_for_two_kinds_of_work() {
        mixed("US-TX", "9.96", false, "tx_sales 0.00 = 249.00");
        mixed("US-TX", "12.45", false, "tx_sales 0.00 = 249.00");
        mixed("US-TX", "12.46", false, "tx_sales 20.54 = 269.54");
        mixed("US-TX", "14.94", false, "tx_sales 20.54 = 269.54");
        mixed("US-TX", "14.94", true, "tx_sales 0.00, tx_sales 1.23 = 250.23");
        mixed("US-NY", "14.94", false, "ny_sales 22.10 = 271.10");
    }

    private static void mixed(String region, String part, boolean documented, String expected) {
        Taxable line = new Taxable(
                1, region, PropertyUse.COMMERCIAL, Work.MAINTENANCE, ContractForm.PLAN, Money.of("249.00", "USD"));
        List<Taxable> lines = MixedPrice.taxables(line, Work.REPAIR, Money.of(part, "USD"), documented);
        assertEquals(expected, said(lines, DAY, new TaxTable(ShippedTaxes.rows(), List.of())));
    }

    @Test
    void a_business_row_outranks_the_shipped_one() {
        List<TaxRow> own = List.of(row("CA-ON", "hst", "S", "12", null, "as if the rate had changed"));
        assertEquals(
                "hst 29.88 = 278.88",
                said("CA-ON", PropertyUse.RESIDENTIAL, DAY, "249.00", new TaxTable(ShippedTaxes.rows(), own)));
    }

    @Test
    void a_small_supplier_charges_none_anywhere() {
        DocumentTaxes taxes = DocumentTaxes.of(
                taxables("US-CA", PropertyUse.RESIDENTIAL, "249.00"), DAY, new TaxTable(List.of(), List.of()), true);
        assertEquals(new DocumentTaxes.Computed(List.of()), taxes);
    }

    /** "9.97 %", "14.97 %" and "14.975 %" must not appear on a document (Revenu Québec, the same page). */
    @Test
    void what_must_never_be_printed_is_nowhere_in_the_table() {
        String labels = ShippedTaxes.rows().stream()
                .map(row -> row.tax().label().en() + row.tax().label().fr())
                .collect(Collectors.joining());
        for (String never : List.of("9.97%", "9,97 %", "14.97", "14,97", "14.975", "14,975")) {
            assertFalse(labels.contains(never), never);
        }
        ShippedTaxes.rows().forEach(row -> assertFalse(row.tax().source().isBlank()));
    }

    private static void check(String region, LocalDate day, String nets, String expected) {
        TaxTable table = new TaxTable(ShippedTaxes.rows(), List.of());
        assertEquals(expected, said(region, PropertyUse.RESIDENTIAL, day, nets, table));
    }

    private static String said(String region, PropertyUse use, LocalDate day, String nets, TaxTable table) {
        return said(taxables(region, use, nets), day, table);
    }

    private static String said(List<Taxable> lines, LocalDate day, TaxTable table) {
        Money net = Money.sum(
                lines.stream().map(Taxable::net).toList(),
                lines.getFirst().net().currency());
        return switch (DocumentTaxes.of(lines, day, table, false)) {
            case DocumentTaxes.Refused refused -> refused.refusal().code();
            case DocumentTaxes.Computed computed ->
                computed.lines().stream()
                                .map(line ->
                                        line.tax().code() + " " + line.amount().decimal())
                                .collect(Collectors.joining(", "))
                        + " = " + net.plus(computed.total(net.currency())).decimal();
        };
    }

    private static List<Taxable> taxables(String region, PropertyUse use, String nets) {
        List<Taxable> lines = new ArrayList<>();
        for (String net : nets.split(" ")) {
            lines.add(new Taxable(
                    lines.size() + 1, region, use, Work.MAINTENANCE, ContractForm.PLAN, Money.of(net, "CAD")));
        }
        return lines;
    }

    private static TaxRow row(
            String region, String code, String category, String percent, @Nullable PropertyUse use, String source) {
        Tax tax = new Tax(code, new Wording(code, code), category, new BigDecimal(percent), region, null, source, true);
        return new TaxRow(tax, use, null, null, LocalDate.of(2020, 1, 1), null);
    }
}
