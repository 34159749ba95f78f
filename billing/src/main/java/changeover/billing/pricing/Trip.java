package changeover.billing.pricing;

import changeover.contracts.money.Money;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.Travel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** How a trip to the home is reckoned: by its minutes of driving, else by what the price book says that a trip costs. */
public sealed interface Trip {

    /** @param minutes there and back, as if the van drove for this home alone */
    record Driven(int minutes) implements Trip {}

    /** @param cost of one trip, where the home or the shop has no place on the map */
    record Priced(Money cost) implements Trip {}

    /** Neither is known. */
    record Unknown() implements Trip {}

    /** Out and back by the roads that are known, a begun minute counted. */
    static Trip between(Travel.Place shop, Travel.Place home, Travel roads) {
        return between(shop, List.of(home), roads).getFirst();
    }

    /** To each home by itself, in their order; all in one question. */
    static List<Trip> between(Travel.Place shop, List<Travel.Place> homes, Travel roads) {
        List<Travel.Place> places = new ArrayList<>(homes);
        places.addFirst(shop);
        Drives drives = roads.between(places);
        return IntStream.rangeClosed(1, homes.size())
                .<Trip>mapToObj(home -> new Driven(Math.ceilDiv(drives.seconds(0, home) + drives.seconds(home, 0), 60)))
                .toList();
    }
}
