package changeover.web.session;

import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.SeasonsMoved;
import changeover.contracts.tenants.CurrentTenant;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Both turns of a calendar year, by the business's own seasons, for the strip under the header. They are remembered, since every
 * page shows them: until a season moves here, and for a minute where another machine moved one.
 */
@ApplicationScoped
class TurnsOfTheYear {

    private static final long FRESH = Duration.ofMinutes(1).toNanos();
    private static final int BUSINESSES_KEPT = 2_000;

    private final Map<UUID, Kept> kept = new ConcurrentHashMap<>();

    @Inject
    Seasons seasons;

    @Inject
    CurrentTenant current;

    private record Kept(int year, List<Turn> turns, long readAt) {
        boolean holds(int asked) {
            return year == asked && System.nanoTime() - readAt < FRESH;
        }
    }

    List<Turn> of(int year) {
        Kept known = kept.get(current.id());
        if (known != null && known.holds(year)) {
            return known.turns();
        }
        long before = System.nanoTime();
        List<Turn> turns = Turn.of(seasons.climate().seasons(), LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
        if (kept.size() >= BUSINESSES_KEPT) {
            kept.clear();
        }
        kept.put(current.id(), new Kept(year, turns, before));
        return turns;
    }

    void forget(@Observes(during = TransactionPhase.AFTER_SUCCESS) SeasonsMoved moved) {
        kept.remove(moved.tenantId());
    }
}
