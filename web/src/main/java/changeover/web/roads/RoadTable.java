package changeover.web.roads;

import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.Travel;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * Roads by the installation's table of roads, where it has one. What is not known yet is asked for outside of the
 * transaction that wants it, and until then reckoned as the crow flies, which the answer says. A table that fails is left
 * alone for a minute.
 */
@ApplicationScoped
public class RoadTable implements Travel {

    private static final Logger LOG = Logger.getLogger(RoadTable.class);
    private static final Duration LEFT_ALONE = Duration.ofMinutes(1);
    private static final AsTheCrowFlies CROW = AsTheCrowFlies.USUAL;

    @ConfigProperty(name = "changeover.roads.table")
    Optional<URI> service = Optional.empty();

    /** For one answer. */
    @ConfigProperty(name = "changeover.roads.patience", defaultValue = "PT3S")
    Duration patience = Duration.ofSeconds(3);

    /** At most so many places in one question, which the service may bound. */
    @ConfigProperty(name = "changeover.roads.places", defaultValue = "100")
    int most = 100;

    @Inject
    Clock clock;

    private final KnownTables known = new KnownTables();
    private final Set<List<Place>> beingAsked = ConcurrentHashMap.newKeySet();
    private final ExecutorService hand = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().daemon().name("table of roads").factory());
    private volatile @Nullable Instant silentUntil;

    /** Whether the installation has a table of roads. */
    public boolean isInstalled() {
        return service.isPresent();
    }

    void use(@Nullable URI other, Duration newPatience) {
        service = Optional.ofNullable(other);
        patience = newPatience;
        silentUntil = null;
    }

    @Override
    public Drives between(List<Place> places) {
        return between(places, CROW);
    }

    @Override
    public Travel elseBy(AsTheCrowFlies crow) {
        return places -> between(places, crow);
    }

    private Drives between(List<Place> places, AsTheCrowFlies crow) {
        if (service.isEmpty()) {
            return crow.between(places);
        }
        Instant now = clock.instant();
        Optional<int[][]> table = known.of(places, now);
        if (table.isPresent()) {
            return Drives.of(table.get(), Drives.By.TABLE);
        }
        List<Place> asked = List.copyOf(places);
        if (!isSilent(now) && beingAsked.add(asked)) {
            hand.execute(() -> {
                try {
                    prepare(asked);
                } finally {
                    beingAsked.remove(asked);
                }
            });
        }
        return crow.between(places).by(Drives.By.CROW_FOR_TABLE);
    }

    @Override
    public void prepare(List<Place> places) {
        Instant now = clock.instant();
        if (service.isEmpty()
                || isSilent(now)
                || places.isEmpty()
                || known.of(places, now).isPresent()) {
            return;
        }
        try {
            known.keep(places, whole(new TableClient(service.get(), patience), places), now);
        } catch (NoAnswer none) {
            LOG.warnf("the table of roads did not answer: %s", none.getMessage());
            silentUntil = now.plus(LEFT_ALONE);
        }
    }

    private boolean isSilent(Instant now) {
        Instant until = silentUntil;
        return until != null && now.isBefore(until);
    }

    /** Asked in squares, since a service bounds its questions; where there is no road, as the crow flies. */
    private int[][] whole(TableClient client, List<Place> places) throws NoAnswer {
        Drives crow = CROW.between(places);
        int side = Math.max(1, most / 2);
        int[][] seconds = new int[places.size()][places.size()];
        for (int from = 0; from < places.size(); from += side) {
            List<Place> rows = places.subList(from, Math.min(places.size(), from + side));
            for (int to = 0; to < places.size(); to += side) {
                List<Place> columns = places.subList(to, Math.min(places.size(), to + side));
                put(client.ask(rows, columns), from, to, seconds, crow);
            }
        }
        return seconds;
    }

    private static void put(int[][] part, int from, int to, int[][] seconds, Drives crow) {
        for (int row = 0; row < part.length; row++) {
            for (int column = 0; column < part[row].length; column++) {
                int said = part[row][column];
                seconds[from + row][to + column] =
                        said == TableClient.NO_ROAD ? crow.seconds(from + row, to + column) : said;
            }
        }
    }

    @PreDestroy
    void stop() {
        hand.shutdownNow();
    }
}
