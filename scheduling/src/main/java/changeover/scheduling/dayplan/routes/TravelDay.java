package changeover.scheduling.dayplan.routes;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** The question of one day: these turns, these stops, these drives. */
public record TravelDay(List<Turn> turns, List<Stop> stops, Drives drives) {

    public TravelDay {
        turns = List.copyOf(turns);
        stops = List.copyOf(stops);
        Set<UUID> crew = turns.stream().map(Turn::technician).collect(Collectors.toSet());
        Set<UUID> visits = new HashSet<>();
        stops.forEach(stop -> {
            require(visits.add(stop.visit()), "The visit %s stands twice".formatted(stop.visit()));
            require(stop.place() >= 0 && stop.place() < drives.places(), "No drive leads to " + stop.visit());
            require(
                    stop.promised() == null || crew.contains(stop.promised().technician()),
                    "The visit %s was promised by somebody who has no turn".formatted(stop.visit()));
        });
        require(crew.size() == turns.size(), "A technician has one turn a day");
        turns.forEach(turn -> require(
                turn.base() >= 0 && turn.base() < drives.places(),
                "No drive leads to the base of " + turn.technician()));
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    /** What was promised in a turn's name, by the hour. */
    List<Stop> promisedBy(Turn turn) {
        return stops.stream()
                .filter(stop ->
                        stop.promised() != null && stop.promised().technician().equals(turn.technician()))
                .sorted(Comparator.comparingInt(Stop::first))
                .toList();
    }

    /** Technicians who were promised to customers at hours that nobody can keep all, with the roads and the lunch between. */
    public List<UUID> overPromised() {
        return turns.stream()
                .filter(turn -> Drive.of(this, turn, promisedBy(turn)).isEmpty())
                .map(Turn::technician)
                .toList();
    }

    /** The day without some technicians and without what was promised in their name. */
    TravelDay without(List<UUID> technicians) {
        return new TravelDay(
                turns.stream()
                        .filter(turn -> !technicians.contains(turn.technician()))
                        .toList(),
                stops.stream()
                        .filter(stop -> stop.promised() == null
                                || !technicians.contains(
                                        Objects.requireNonNull(stop.promised()).technician()))
                        .toList(),
                drives);
    }
}
