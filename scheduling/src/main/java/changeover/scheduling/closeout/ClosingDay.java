package changeover.scheduling.closeout;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * A visit is closed on the day of the business by our clock, or on the day it was appointed for when the device says so
 * and that day is not to come: a device's clock moves no other date.
 */
record ClosingDay(ZoneId zone, Instant now) {

    LocalDate of(Instant saidAt, @Nullable LocalDate appointed) {
        LocalDate today = LocalDate.ofInstant(now, zone);
        LocalDate said = LocalDate.ofInstant(saidAt, zone);
        return appointed != null && said.equals(appointed) && !appointed.isAfter(today) ? appointed : today;
    }
}
