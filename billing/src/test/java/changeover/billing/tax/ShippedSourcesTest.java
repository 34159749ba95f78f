package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class ShippedSourcesTest {

    @Test
    void every_shipped_row_names_its_source_in_french_too() {
        for (TaxRow row : ShippedTaxes.rows()) {
            String source = row.tax().source();
            assertEquals(source, ShippedSources.in(Locale.CANADA, source));
            assertNotEquals(source, ShippedSources.in(Locale.CANADA_FRENCH, source));
        }
    }

    @Test
    void what_a_person_wrote_stands_as_written() {
        assertEquals("Lettre du comptable", ShippedSources.in(Locale.CANADA_FRENCH, "Lettre du comptable"));
    }
}
