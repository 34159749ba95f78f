package changeover.scheduling.calls;

import java.util.List;
import java.util.Optional;

/**
 * The number that saves a life comes before any of ours. Local authorities decide: where a place has another number, theirs
 * holds.
 *
 * @param country as ISO 3166-1 alpha-2
 * @param source who says so
 */
public record EmergencyNumber(String country, String number, String source) {

    private static final List<EmergencyNumber> ALL = List.of(
            new EmergencyNumber(
                    "CA", "911", "Canadian Radio-television and Telecommunications Commission, 9-1-1 services"),
            new EmergencyNumber("US", "911", "47 U.S.C. 251(e)(3), universal emergency telephone number"),
            new EmergencyNumber("FR", "112", "Directive (EU) 2018/1972, Art. 109"),
            new EmergencyNumber("BE", "112", "Directive (EU) 2018/1972, Art. 109"),
            new EmergencyNumber("DE", "112", "Directive (EU) 2018/1972, Art. 109"));

    /** Empty where we know of none: the page then says "the emergency number". */
    public static Optional<String> in(String country) {
        return ALL.stream()
                .filter(one -> one.country().equals(country))
                .map(EmergencyNumber::number)
                .findFirst();
    }
}
