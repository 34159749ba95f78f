package changeover.deploy.bench;

import java.util.List;
import java.util.Optional;

/**
 * Drives the routes of an answer through the case itself, vehicle by vehicle, and says what they break; nothing of what
 * found them is asked.
 *
 * @param tenths what is driven in all
 * @param broken empty when every rule of the case is kept
 */
record SolomonCheck(long tenths, Optional<String> broken) {

    static SolomonCheck of(SolomonFile solomon, List<List<Integer>> routes) {
        int[] visited = new int[solomon.places().size()];
        long all = 0;
        Optional<String> broken = routes.size() > solomon.vehicles()
                ? Optional.of("%d vehicles drive of %d".formatted(routes.size(), solomon.vehicles()))
                : Optional.empty();
        for (List<Integer> route : routes) {
            int at = 0;
            long load = 0;
            long clock = 10L * solomon.places().getFirst().ready();
            for (int customer : route) {
                if (customer < 1 || customer >= visited.length) {
                    return new SolomonCheck(all, Optional.of("there is no customer " + customer));
                }
                SolomonFile.Place place = solomon.places().get(customer);
                visited[customer]++;
                load += place.demand();
                all += solomon.tenths(at, customer);
                clock = Math.max(clock + solomon.tenths(at, customer), 10L * place.ready());
                if (clock > 10L * place.due()) {
                    broken = Optional.of("customer %d is reached after its due date".formatted(customer));
                }
                clock += 10L * place.service();
                at = customer;
            }
            all += solomon.tenths(at, 0);
            if (clock + solomon.tenths(at, 0)
                    > 10L * solomon.places().getFirst().due()) {
                broken = Optional.of("the vehicle that ends at customer %d is back too late".formatted(at));
            }
            if (load > solomon.room()) {
                broken = Optional.of("the vehicle that ends at customer %d is too full".formatted(at));
            }
        }
        for (int customer = 1; customer < visited.length; customer++) {
            if (visited[customer] != 1) {
                broken = Optional.of("customer %d is visited %d times".formatted(customer, visited[customer]));
            }
        }
        return new SolomonCheck(all, broken);
    }
}
