package changeover.billing.documents;

import changeover.billing.estimates.Estimates;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** Draws papers of estimates that nobody wrote, and fails for the ones that a test names. */
@ApplicationScoped
public class PapersForTests implements PaperSource {

    public static final AtomicInteger DRAWN = new AtomicInteger();
    public static final Set<UUID> FAILING = ConcurrentHashMap.newKeySet();

    @Inject
    Estimates estimates;

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.ESTIMATE);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            if (FAILING.contains(one.ofId())) {
                drawn.put(one, new Drawn.Failed("no ink"));
            } else if (estimates.find(one.ofId()).isEmpty()) {
                DRAWN.incrementAndGet();
                drawn.put(one, new Drawn.Paper(DrawnPaper.pdf("S " + one.version(), "fr", new byte[] {'%', 'P', 'D', 'F'
                })));
            }
        }
        return drawn;
    }
}
