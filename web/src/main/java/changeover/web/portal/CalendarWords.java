package changeover.web.portal;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What stands in calendars, and on the pages that make and take back a calendar's link. */
@MessageBundle("calendar")
public interface CalendarWords {

    @Message("Visits of {technician}, {business}")
    String visits_of(String technician, String business);

    @Message("Visits at {street}, {business}")
    String visits_at(String street, String business);

    @Message("Visit of {business}")
    String visit_of(String business);

    @Message("{technician} comes.")
    String comes(String technician);

    @Message("To move it, ring {phone}.")
    String ring(String phone);

    @Message("About {minutes} min of work.")
    String minutes(int minutes);

    @Message("Visits in a calendar")
    String heading();

    @Message(
            "A calendar that holds this link shows the visits of this home by itself, also when one moves or falls away. Give it to the household only.")
    String lead_home();

    @Message(
            "A calendar that holds this link shows your visits by itself, also when one moves or falls away. It shows streets: give it to nobody else.")
    String lead_own();

    @Message("A link made on {day} is open.")
    String made_on(String day);

    @Message("No calendar has a link today.")
    String none();

    @Message("Words of the calendar")
    String language();

    @Message("Make a link")
    String make();

    @Message("Take back every link")
    String revoke();

    @Message("The link, shown once")
    String shown();

    @Message(
            "Copy it now into the calendar, where it subscribes to an address. We keep only what lets us recognise it.")
    String shown_lead();

    @Message("Back")
    String back();

    @Message("You go along with {name}.")
    String goes_along(String name);
}
