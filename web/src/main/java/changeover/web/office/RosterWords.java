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

    @Message("First day")
    String day();

    @Message("Last day, where there are several")
    String last();

    @Message("Booked on days off")
    String booked();

    @Message("These visits stand on days that are not worked. Share each day out: whoever was told an hour keeps it.")
    String booked_lead();

    @Message("Share this day out")
    String share_out();

    @Message("What for")
    String why();

    @Message("The whole business is closed then")
    String closed();

    @Message("Add the day off")
    String add();

    @Message("Work after all")
    String work();

    @Message("Tickets")
    String cards();

    @Message("no last day")
    String no_end();

    @Message("It holds no more.")
    String card_over();

    @Message("It runs out soon.")
    String card_soon();

    @Message("No ticket is written. Work that needs one is given to somebody else.")
    String no_cards();

    @Message("Keep the ticket")
    String keep_card();

    @Message("Where the day begins and ends")
    String base();

    @Message("The drives of a day are reckoned from here and back. While nothing is written, the day begins at the"
            + " shop.")
    String base_lead();

    @Message("Address")
    String address();

    @Message("Minutes of lunch")
    String lunch();

    @Message("Keep the place")
    String keep_base();

    @Message("Van: {name}.")
    String van(String name);

    @Message("No van yet: it comes with the first part that is put into it.")
    String no_van();

    @Message("What is in it")
    String parts();

    @Message("Holidays of the place, not worked")
    String holidays();

    @Message("No holiday of this place is known here. Write the days that the whole business is closed.")
    String no_holidays();

    @Message("Tickets that run out")
    String running_out();

    @Message("See to it")
    String see();
}
