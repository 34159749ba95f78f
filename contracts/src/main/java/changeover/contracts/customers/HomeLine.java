package changeover.contracts.customers;

import org.jspecify.annotations.Nullable;

/** An address in one line, as it is said on the telephone: street, unit, city. */
final class HomeLine {

    private HomeLine() {}

    static String of(String street, @Nullable String unitLabel, String city) {
        String first = street.replaceAll("\\s*\\R\\s*", ", ");
        String unit = unitLabel == null || unitLabel.isBlank() ? "" : ", " + unitLabel;
        return first + unit + (city.isBlank() ? "" : ", " + city);
    }
}
