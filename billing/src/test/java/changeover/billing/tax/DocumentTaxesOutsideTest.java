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

    /** A place without a row, or a day before its first, is a refusal and never nought. */
    @Test
    void an_unknown_place_is_refused() {
        check("CA-AB", DAY, "249.00", "tax.place-unknown");
        check("US-NY", DAY, "249.00", "tax.place-unknown");
        check("CA-QC", LocalDate.of(2012, 12, 31), "249.00", "tax.place-unknown");
    }

    /**
     * New York taxes the whole annual contract for heating and cooling even if no visit occurs (20 NYCRR 527.7, example 8):
     * 249.00 at 8.875 % is 22.10. Texas: residential labour is not taxed, work on other property is (34 TAC 3.291, 3.357).
     */
    @Test
    void two_places_that_a_business_adds_with_their_sources() {
        List<TaxRow> own = List.of(
                row("US-NY", "ny_sales", "S", "8.875", null, "20 NYCRR 527.7 example 8"),
                row("US-TX", "tx_sales", "S", "8.25", PropertyUse.COMMERCIAL, "34 TAC 3.357"),
                row("US-TX", "tx_sales", "O", "0", PropertyUse.RESIDENTIAL, "34 TAC 3.291"));
        TaxTable table = new TaxTable(ShippedTaxes.rows(), own);
        assertEquals("ny_sales 22.10 = 271.10", said("US-NY", PropertyUse.RESIDENTIAL, DAY, "249.00", table));
        assertEquals("tx_sales 0.00 = 249.00", said("US-TX", PropertyUse.RESIDENTIAL, DAY, "249.00", table));
        assertEquals("tx_sales 20.54 = 269.54", said("US-TX", PropertyUse.COMMERCIAL, DAY, "249.00", table));
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
                taxables("CA-AB", PropertyUse.RESIDENTIAL, "249.00"), DAY, new TaxTable(List.of(), List.of()), true);
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
        List<Taxable> lines = taxables(region, use, nets);
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
