package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of working hours and days off. */
@MessageBundle("roster")
public interface RosterWords {

    @Message("Working hours")
    String heading();

    @Message("The season’s days are given inside these hours. Leave both empty for a day that is not worked.")
    String lead();

    @Message("Nothing was written yet: Monday to Friday, 8:00 to 16:00, is reckoned with.")
    String usual();

    @Message("{weekday}, from")
    String from(String weekday);

    @Message("until")
    String until();

    @Message("Keep the hours")
    String keep();

    @Message("Days off to come")
    String days_off();

    @Message("No day off is written.")
    String none();

    @Message("whole business")
    String whole();

    @Message("Day")
    String day();

    @Message("What for")
    String why();

    @Message("The whole business is closed that day")
    String closed();

    @Message("Add the day off")
    String add();

    @Message("Work after all")
    String work();
}
