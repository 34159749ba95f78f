package changeover.web.office;

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
}
