package changeover.scheduling.calls;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The number that saves a life comes before any of ours. Where a place has another number, the local one holds.
 *
 * @param country as ISO 3166-1 alpha-2
 * @param source who says so
 * @param day of the source: of the law, or on which the page was read
 */
public record EmergencyNumber(String country, String number, String source, LocalDate day) {

    private static final String EUROPE = "Directive (EU) 2018/1972, Art. 109, single European emergency number";

    private static final List<EmergencyNumber> ALL = List.of(
            new EmergencyNumber(
                    "CA",
                    "911",
                    "CRTC, 9-1-1 services, https://crtc.gc.ca/eng/phone/911/can.htm",
                    LocalDate.of(2026, 11, 25)),
            new EmergencyNumber(
                    "US",
                    "911",
                    "47 U.S.C. 251(e)(3), universal emergency telephone number",
                    LocalDate.of(1999, 10, 26)),
            new EmergencyNumber("FR", "112", EUROPE, LocalDate.of(2018, 12, 11)),
            new EmergencyNumber("BE", "112", EUROPE, LocalDate.of(2018, 12, 11)));

    /** Empty where we know of none: the page then says "the emergency number". */
    public static Optional<String> in(String country) {
        return ALL.stream()
                .filter(one -> one.country().equals(country))
                .map(EmergencyNumber::number)
                .findFirst();
    }
}
