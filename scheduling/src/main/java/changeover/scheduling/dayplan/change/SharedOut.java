package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The day of somebody who is ill, shared out among the others: who was told an hour keeps it, nobody else's hour moves, and
 * what finds no place goes back to the season. Where two must go, two are found; where they only went along, somebody else does.
 *
 * @param shares in the order of the day
 */
public record SharedOut(List<Share> shares) {

    /**
     * What becomes of one visit.
     *
     * @param was minute at which it was to begin
     * @param along whether they only went along: whoever leads keeps it
     * @param technician who makes it the same day, or goes along instead; null where it goes back to the season, or wants
     *     somebody else to go along
     * @param second who goes along with them, where nobody did yet and two must go; else null
     * @param starts minute at which it begins then
     */
    public record Share(
            UUID visit,
            int was,
            boolean told,
            boolean along,
            @Nullable UUID technician,
            @Nullable UUID second,
            int starts,
            int ends) {}

    public static SharedOut of(HeldDay ill, List<HeldDay> others, Roads roads) {
        return of(ill, Set.of(), others, roads);
    }

    /** @param along visits to which they only go along */
    public static SharedOut of(HeldDay ill, Set<UUID> along, List<HeldDay> others, Roads roads) {
        var days = new ArrayList<>(others);
        var shares = new ArrayList<Share>();
        List<Held> fixedFirst = ill.held().stream()
                .sorted(Comparator.comparing((Held one) -> !one.stays()).thenComparingInt(Held::starts))
                .toList();
        for (Held held : fixedFirst) {
            shares.add(share(held, along.contains(held.visit()), days, roads, ill.now()));
        }
        shares.sort(Comparator.comparingInt(Share::was));
        return new SharedOut(List.copyOf(shares));
    }

    private static Share share(Held held, boolean along, List<HeldDay> days, Roads roads, int now) {
        int first = held.stays() ? held.starts() : Math.max(now, held.earliest());
        int last = held.stays() ? held.starts() : held.latest();
        var wanted = new Insertions.Wanted(
                held.visit(),
                held.minutes(),
                along ? Set.of() : held.tickets(),
                held.place(),
                along ? 1 : held.people(),
                first,
                last);
        boolean over = held.stays() && held.starts() < now;
        Insertions.Offer best = over
                ? null
                : Insertions.offers(days, wanted, roads, Integer.MAX_VALUE).stream()
                        .filter(offer -> offer.moved().isEmpty())
                        .findFirst()
                        .orElse(null);
        if (best == null) {
            return new Share(held.visit(), held.starts(), held.told(), along, null, null, 0, 0);
        }
        days.replaceAll(day -> changed(best, day));
        return new Share(
                held.visit(),
                held.starts(),
                held.told(),
                along,
                best.technician(),
                best.second().orElse(null),
                best.starts(),
                best.ends());
    }

    private static HeldDay changed(Insertions.Offer offer, HeldDay day) {
        HeldDay along = offer.along();
        if (along != null && along.technician().equals(day.technician())) {
            return along;
        }
        return day.technician().equals(offer.technician()) ? offer.day() : day;
    }
}
