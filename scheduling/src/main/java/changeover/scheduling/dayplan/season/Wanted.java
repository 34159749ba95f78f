package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import java.util.Set;
import java.util.UUID;

/**
 * A visit that waits for a day, with all that it asks of the day.
 *
 * @param minutes at the home
 * @param tickets kinds of ticket that whoever goes must hold, all of them
 * @param people one, or two who go together
 * @param earliest minute of the day before which it may not begin
 * @param latest last minute of the day at which it may begin
 * @param place where the home is, as the season's roads number the places
 */
public record Wanted(
        UUID visit, Window window, int minutes, Set<String> tickets, int people, int earliest, int latest, int place) {

    public static final int MIDNIGHT = 24 * 60;

    public Wanted {
        tickets = Set.copyOf(tickets);
        if (minutes < 1 || people < 1 || people > 2 || earliest < 0 || latest < earliest || latest > MIDNIGHT) {
            throw new IllegalArgumentException("The visit %s asks what no day can give".formatted(visit));
        }
    }
}
