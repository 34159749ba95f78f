package changeover.billing.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The postal code goes before the distance: the zone with the longest beginning that fits; else the nearest zone that
 * reaches as far as the home; else none, and the ordinary fee is asked.
 */
public record TravelZones(List<TravelZone> zones) {

    public TravelZones {
        zones = List.copyOf(zones);
    }

    /** The zones in force on a day, by code. */
    public List<TravelZone> on(LocalDate day) {
        return zones.stream()
                .filter(zone -> !zone.from().isAfter(day))
                .filter(zone -> zones.stream()
                        .noneMatch(other -> other.code().equals(zone.code())
                                && other.from().isAfter(zone.from())
                                && !other.from().isAfter(day)))
                .filter(zone -> !zone.closed())
                .sorted(Comparator.comparing(TravelZone::code))
                .toList();
    }

    /**
     * Empty while the business has no zones on that day.
     *
     * @param kilometres from the shop, as the crow flies; null while either place is unknown
     */
    public Optional<ZoneOfHome> of(LocalDate day, String postal, @Nullable BigDecimal kilometres) {
        List<TravelZone> held = on(day);
        if (held.isEmpty()) {
            return Optional.empty();
        }
        String bare = TravelZone.bare(postal);
        return Optional.of(byPostal(held, bare)
                .or(() -> byDistance(held, kilometres))
                .orElseGet(() -> new ZoneOfHome(
                        null, kilometres == null ? ZoneReasons.UNKNOWN : ZoneReasons.beyond(kilometres))));
    }

    private static Optional<ZoneOfHome> byPostal(List<TravelZone> held, String postal) {
        record Fits(TravelZone zone, String beginning) {}
        return held.stream()
                .flatMap(zone -> zone.postals().stream().map(beginning -> new Fits(zone, beginning)))
                .filter(fits -> postal.startsWith(fits.beginning()))
                .max(Comparator.comparing(fits -> fits.beginning().length()))
                .map(fits -> new ZoneOfHome(
                        fits.zone(), ZoneReasons.postal(fits.zone().name(), fits.beginning())));
    }

    private static Optional<ZoneOfHome> byDistance(List<TravelZone> held, @Nullable BigDecimal kilometres) {
        if (kilometres == null) {
            return Optional.empty();
        }
        return held.stream()
                .filter(zone -> zone.withinKm() != null && reaches(zone.withinKm(), kilometres))
                .min(Comparator.comparing(zone -> zone.withinKm() == null ? 0 : zone.withinKm()))
                .map(zone -> new ZoneOfHome(zone, ZoneReasons.distance(zone.name(), kilometres)));
    }

    private static boolean reaches(int withinKm, BigDecimal kilometres) {
        return BigDecimal.valueOf(withinKm).compareTo(kilometres) >= 0;
    }

    /** Metres as kilometres with one decimal, half-up: what is said is what was judged. */
    public static BigDecimal kilometres(long metres) {
        return BigDecimal.valueOf(metres).movePointLeft(3).setScale(1, RoundingMode.HALF_UP);
    }
}
