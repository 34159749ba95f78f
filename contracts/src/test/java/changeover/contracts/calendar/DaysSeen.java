package changeover.contracts.calendar;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

/** The work of the days that passed, as some part of the product would do it: written down, or failing. */
@ApplicationScoped
class DaysSeen {

    private final Map<String, List<LocalDate>> days = new ConcurrentHashMap<>();
    private final Set<String> failing = ConcurrentHashMap.newKeySet();

    void see(@Observes DayPassed passed) {
        if (failing.contains(passed.tenantId())) {
            throw new IllegalStateException("a day that fails");
        }
        days.computeIfAbsent(passed.tenantId(), _ -> new CopyOnWriteArrayList<>())
                .add(passed.day());
    }

    void fail(UUID tenant) {
        failing.add(tenant.toString());
    }

    void mend(UUID tenant) {
        failing.remove(tenant.toString());
    }

    List<LocalDate> of(UUID tenant) {
        return days.getOrDefault(tenant.toString(), List.of());
    }
}
