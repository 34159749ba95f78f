package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.scheduling.dayplan.season.SeasonRunReading;
import changeover.web.session.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The days of a week by road: each technician's stops of each day in their order. */
final class PlanningRoads {

    private PlanningRoads() {}

    /** @param kept by day, technician and hour */
    static List<SeasonRunPages.Road> of(List<SeasonRunReading.Row> kept, Frame frame) {
        var roads = new ArrayList<SeasonRunPages.Road>();
        int from = 0;
        while (from < kept.size()) {
            SeasonRunReading.Row first = kept.get(from);
            int until = from;
            while (until < kept.size()
                    && Objects.equals(kept.get(until).day(), first.day())
                    && Objects.equals(kept.get(until).technicianId(), first.technicianId())) {
                until++;
            }
            roads.add(new SeasonRunPages.Road(
                    DayWords.of(frame.locale()).withWeekday(Objects.requireNonNull(first.day())),
                    first.technician() == null ? "" : first.technician(),
                    kept.subList(from, until).stream().map(PlanningRoads::stop).toList()));
            from = until;
        }
        return roads;
    }

    private static SeasonRunPages.Stop stop(SeasonRunReading.Row row) {
        return new SeasonRunPages.Stop(
                row.visit(),
                row.home(),
                row.starts() + " – " + row.ends(),
                row.road(),
                row.second() == null ? "" : row.second(),
                row.given(),
                row.tried());
    }
}
