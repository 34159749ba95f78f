package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Input Tax Credit Information (GST/HST) Regulations, SOR/91-45, s. 3, with the amounts of 100 and 500 dollars that hold since
 * 2021-04-20, on the total with taxes; Building Act of Quebec, s. 57.1, for the licence.
 */
class InvoiceParticularsOutsideTest {

    @Test
    void under_100_who_when_and_how_much() {
        check("99.99", null, false, "[SELLER_NAME, DAY, TOTAL]");
    }

    @Test
    void from_100_the_numbers_and_the_taxes() {
        check("100.00", null, false, "[SELLER_NAME, DAY, TOTAL, REGISTRATION_NUMBERS, TAXES_BY_LINE]");
        check("499.99", null, false, "[SELLER_NAME, DAY, TOTAL, REGISTRATION_NUMBERS, TAXES_BY_LINE]");
        check("100.00", null, true, "[SELLER_NAME, DAY, TOTAL]");
    }

    @Test
    void from_500_the_recipient_the_terms_and_each_supply() {
        check(
                "500.00",
                null,
                false,
                "[SELLER_NAME, DAY, TOTAL, REGISTRATION_NUMBERS, TAXES_BY_LINE, BUYER_NAME, TERMS, DESCRIPTIONS]");
    }

    @Test
    void a_contractor_of_quebec_prints_the_licence_on_every_one() {
        check("1.00", "1234-5678-90", false, "[SELLER_NAME, DAY, TOTAL, LICENCE]");
    }

    private static void check(String total, @Nullable String licence, boolean smallSupplier, String expected) {
        Seller seller = new Seller("Lampe", "", "", "QC", "", "CA", null, null, licence, null, null, smallSupplier);
        assertEquals(
                expected, InvoiceParticulars.of(Money.of(total, "CAD"), seller).toString());
    }
}
