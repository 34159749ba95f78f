package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import java.util.UUID;

/**
 * One time that one task is owed on one machine, with the days it may be done on and the reason in words.
 *
 * @param minutes planning figure
 */
public record Promise(UUID equipmentId, String taskCode, Who who, int minutes, Due due, Wording reason) {

    public Window window() {
        return due.window();
    }
}
