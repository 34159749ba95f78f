package changeover.scheduling.dayplan.change;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import changeover.scheduling.dayplan.season.Roads;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The day of somebody who is ill, shared out among the others: who was told an hour keeps it, nobody else's hour moves, and
 * what finds no place goes back to the season.
 *
 * @param shares in the order of the day
 */
public record SharedOut(List<Share> shares) {

    /**
     * What becomes of one visit.
     *
     * @param was minute at which it was to begin
     * @param technician who makes it the same day; null where it goes back to the season
     * @param starts minute at which it begins then
     */
    public record Share(
            UUID visit, int was, boolean told, @Nullable UUID technician, int starts, int ends) {}

    public static SharedOut of(HeldDay ill, List<HeldDay> others, Roads roads) {
        var days = new ArrayList<>(others);
        var shares = new ArrayList<Share>();
        List<Held> fixedFirst = ill.held().stream()
                .sorted(Comparator.comparing((Held one) -> !one.stays()).thenComparingInt(Held::starts))
                .toList();
        for (Held held : fixedFirst) {
            shares.add(share(held, days, roads, ill.now()));
        }
        shares.sort(Comparator.comparingInt(Share::was));
        return new SharedOut(List.copyOf(shares));
    }

    private static Share share(Held held, List<HeldDay> days, Roads roads, int now) {
        int first = held.stays() ? held.starts() : Math.max(now, held.earliest());
        int last = held.stays() ? held.starts() : held.latest();
        var wanted = new Insertions.Wanted(held.visit(), held.minutes(), held.tickets(), held.place(), first, last);
        boolean over = held.stays() && held.starts() < now;
        Insertions.Offer best = over
                ? null
                : Insertions.offers(days, wanted, roads, Integer.MAX_VALUE).stream()
                        .filter(offer -> offer.moved().isEmpty())
                        .findFirst()
                        .orElse(null);
        if (best == null) {
            return new Share(held.visit(), held.starts(), held.told(), null, 0, 0);
        }
        days.replaceAll(day -> day.technician().equals(best.technician()) ? best.day() : day);
        return new Share(held.visit(), held.starts(), held.told(), best.technician(), best.starts(), best.ends());
    }
}
