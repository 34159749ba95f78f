package changeover.web.office;

import changeover.contracts.tenants.Today;
import changeover.web.session.Typed;
import jakarta.ws.rs.NotFoundException;
import java.time.DateTimeException;
import java.time.LocalDate;

/** A day of an address; what is none is not found. */
final class SaidDay {

    private SaidDay() {}

    static LocalDate of(String said) {
        try {
            return Typed.readDay(said);
        } catch (DateTimeException notADay) {
            throw new NotFoundException();
        }
    }

    /** The minute of the day before which everything has begun: nought for a day to come, all of a day that is over. */
    static int begun(LocalDate day, Today today) {
        if (day.isAfter(today.day())) {
            return 0;
        }
        return day.isBefore(today.day()) ? 24 * 60 : today.time().toLocalTime().toSecondOfDay() / 60;
    }
}
