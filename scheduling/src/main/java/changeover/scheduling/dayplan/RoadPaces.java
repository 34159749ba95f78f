package changeover.scheduling.dayplan;

import changeover.contracts.words.Checks;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.List;

/** How the current business reckons a road of which no table says how long it takes: the newest row counts. */
@ApplicationScoped
public class RoadPaces {

    public static final int SHORTEST_PERCENT = 100;
    public static final int LONGEST_PERCENT = 300;
    public static final int SLOWEST = 10;
    public static final int FASTEST = 130;

    @Inject
    EntityManager rows;

    /** As the business has set it, else as usual. */
    public AsTheCrowFlies current() {
        List<Tuple> newest = DayPlans.tuples(rows.createNativeQuery(
                        "select detour_percent, km_an_hour from road_pace where tenant_id = current_tenant()"
                                + " order by id desc limit 1",
                        Tuple.class)
                .getResultList());
        return newest.isEmpty()
                ? AsTheCrowFlies.USUAL
                : new AsTheCrowFlies(
                        newest.getFirst().get("detour_percent", Integer.class),
                        newest.getFirst().get("km_an_hour", Integer.class));
    }

    /**
     * @param detourPercent the road over the straight line, 100 to 300
     * @param kmAnHour from door to door, 10 to 130
     * @throws changeover.contracts.words.Refused beyond these
     */
    public void set(int detourPercent, int kmAnHour) {
        var checks = new Checks();
        checks.refuseIf(
                detourPercent < SHORTEST_PERCENT || detourPercent > LONGEST_PERCENT, "detour", "roads.detour-bounds");
        checks.refuseIf(kmAnHour < SLOWEST || kmAnHour > FASTEST, "speed", "roads.speed-bounds");
        checks.orRefuse();
        rows.createNativeQuery("insert into road_pace (detour_percent, km_an_hour) values (:detour, :speed)")
                .setParameter("detour", detourPercent)
                .setParameter("speed", kmAnHour)
                .executeUpdate();
    }
}
