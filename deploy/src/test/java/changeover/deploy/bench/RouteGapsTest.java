package changeover.deploy.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RouteGapsTest {

    @Test
    void the_mean_and_the_worst_are_judged_together() {
        check("routes instances=2 mean_gap=0.50% worst_gap=1.00% infeasible=0 verdict=goal", 0, 1000, 1010);
        check("routes instances=2 mean_gap=0.55% worst_gap=1.10% infeasible=0 verdict=good", 0, 1000, 1011);
        check("routes instances=2 mean_gap=2.00% worst_gap=4.00% infeasible=0 verdict=good", 0, 1000, 1040);
        check("routes instances=2 mean_gap=2.05% worst_gap=4.10% infeasible=0 verdict=missed", 0, 1000, 1041);
        check(
                "routes instances=8 mean_gap=1.00% worst_gap=8.00% infeasible=0 verdict=good",
                0, 1000, 1000, 1000, 1000, 1000, 1000, 1080);
        check(
                "routes instances=8 mean_gap=1.01% worst_gap=8.10% infeasible=0 verdict=missed",
                0, 1000, 1000, 1000, 1000, 1000, 1000, 1081);
        check("routes instances=2 mean_gap=0.00% worst_gap=0.00% infeasible=1 verdict=missed", 1, 1000, 1000);
        check("routes instances=0 mean_gap=0.00% worst_gap=0.00% infeasible=0 verdict=missed", 0);
    }

    /** Every distance against one of 1000 tenths, beside one that is reached. */
    private static void check(String expected, int infeasible, long... tenths) {
        RouteGaps gaps = new RouteGaps();
        int instances = tenths.length;
        for (long one : tenths) {
            gaps.add(RouteGaps.gap(one, 1000));
        }
        if (tenths.length > 2) {
            gaps.add(RouteGaps.gap(1000, 1000));
            instances++;
        }
        assertEquals(expected, gaps.line(instances, infeasible));
    }
}
