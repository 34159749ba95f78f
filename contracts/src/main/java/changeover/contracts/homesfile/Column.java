package changeover.contracts.homesfile;

import java.util.Locale;

/** The columns of the homes file, in their fixed order; one row a unit, a home repeated over its units. */
enum Column {
    HOME(true),
    CUSTOMER(true),
    LANGUAGE(false),
    PHONE(false),
    EMAIL(false),
    STREET(true),
    CITY(true),
    REGION(true),
    POSTAL(false),
    COUNTRY(true),
    LATITUDE(false),
    LONGITUDE(false),
    ACCESS(false),
    UNIT(false),
    KIND(false),
    MAKE(false),
    MODEL(false),
    SERIAL(false),
    INSTALLED(false),
    FITS(false),
    NAMEPLATE(false);

    private final boolean mustBeThere;

    Column(boolean mustBeThere) {
        this.mustBeThere = mustBeThere;
    }

    String title() {
        return name().toLowerCase(Locale.ROOT);
    }

    boolean mustBeThere() {
        return mustBeThere;
    }

    /** Belongs to the home, so it says the same on every row of the home. */
    boolean isOfTheHome() {
        return compareTo(UNIT) < 0;
    }

    /** A text that a spreadsheet could take for a formula; numbers, days and telephones are exempt. */
    boolean isGuarded() {
        return this != PHONE && this != LATITUDE && this != LONGITUDE && this != INSTALLED;
    }
}
