package changeover.billing.pricesfile;

import java.util.Locale;

/** The columns of the price file, in their fixed order; the name and the unit are for the reader and not taken in. */
enum Column {
    KIND,
    ITEM,
    NAME,
    UNIT,
    FROM,
    PRICE,
    COST,
    CURRENCY;

    String title() {
        return name().toLowerCase(Locale.ROOT);
    }
}
