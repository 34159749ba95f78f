package changeover.billing.invoices;

import changeover.contracts.tenants.Locales;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;

/** A day as people write it: April 1, 2026; 1er avril 2026. */
final class DaySaid {

    private static final DateTimeFormatter ENGLISH = DateTimeFormatter.ofPattern("MMMM d, yyyy", Locales.ENGLISH);
    private static final DateTimeFormatter FRENCH = DateTimeFormatter.ofPattern("d MMMM yyyy", Locales.FRENCH);

    private DaySaid() {}

    static Wording of(LocalDate day) {
        String french = FRENCH.format(day);
        return new Wording(ENGLISH.format(day), day.getDayOfMonth() == 1 ? "1er" + french.substring(1) : french);
    }
}
