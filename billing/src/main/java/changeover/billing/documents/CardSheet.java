package changeover.billing.documents;

import changeover.billing.documents.band.HomeYear;
import changeover.contracts.catalogue.FindingLevel;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Everything a technician must know before the door opens.
 *
 * @param warnings dog, ladder, suspected asbestos: first on the card
 * @param gettingIn how to get in, in words
 * @param keys labels and codes; empty unless the owner asked for them on this card
 * @param toBeRead whether the machines are read at the first visit
 * @param link what the QR code opens, null for none
 */
public record CardSheet(
        Locale language,
        String business,
        @Nullable String phone,
        LocalDate printedOn,
        String title,
        List<String> address,
        List<String> warnings,
        @Nullable String gettingIn,
        List<Pair> keys,
        List<Person> people,
        boolean toBeRead,
        List<Unit> units,
        List<OpenFinding> findings,
        List<Visit> visits,
        @Nullable String nextVisit,
        @Nullable HomeYear year,
        @Nullable String link) {

    public CardSheet {
        address = List.copyOf(address);
        warnings = List.copyOf(warnings);
        keys = List.copyOf(keys);
        people = List.copyOf(people);
        units = List.copyOf(units);
        findings = List.copyOf(findings);
        visits = List.copyOf(visits);
    }

    /** A caption and its value. */
    public record Pair(String caption, String value) {}

    /** @param parts signs, pays, lives here … in words */
    public record Person(
            String name, String parts, @Nullable String phone) {}

    /**
     * A machine.
     *
     * @param big what one looks for first: filter size, pad, model
     * @param air the direction of the air through a filter, null where there is none
     * @param facts serial, place, warranties, what fits it
     */
    public record Unit(
            String name, @Nullable String big, @Nullable Air air, List<Pair> facts) {
        public Unit {
            facts = List.copyOf(facts);
        }
    }

    /** A finding that is still open. */
    public record OpenFinding(
            FindingLevel level, LocalDate day, @Nullable String equipment, String text) {}

    /** A past visit in a line. */
    public record Visit(LocalDate day, String technician, String words) {}
}
