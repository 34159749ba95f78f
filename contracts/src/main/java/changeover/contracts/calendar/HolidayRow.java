package changeover.contracts.calendar;

/** A holiday with its names and how its day is found. */
record HolidayRow(String nameEn, String nameFr, HolidayRule rule) {

    Holiday in(int year) {
        return new Holiday(rule.in(year), nameEn, nameFr, true);
    }
}
