package changeover.contracts.agreements;

import changeover.contracts.customers.PartInHome;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;

/**
 * A home changes hands. Sold, everything passes to the new owner; let to somebody else, the tenant lives there and opens the
 * door, and whoever signs, pays and reads the report stays.
 *
 * @param follows whether the agreement goes on with the new owner; of a home that is let nothing changes in it
 */
public record Handover(UUID homeId, Kind kind, UUID customerId, LocalDate day, boolean follows) {

    /** What happened. */
    public enum Kind {
        SOLD(EnumSet.allOf(PartInHome.class)),
        LET(EnumSet.of(PartInHome.LIVES, PartInHome.LETS_IN));

        private final Set<PartInHome> passes;

        Kind(Set<PartInHome> passes) {
            this.passes = passes;
        }

        /** The parts that pass from whoever has them. */
        public Set<PartInHome> passes() {
            return passes;
        }

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Kind ofCode(String code) {
            return valueOf(code.toUpperCase(Locale.ROOT));
        }
    }
}
