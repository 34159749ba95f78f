package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of homes that are shut for a time. */
@MessageBundle("shut")
public interface ShutWords {
    @Message("When the home is shut")
    String heading();

    @Message(
            "No day is given while a home is shut: the season, a visit that is fitted in and a day that moves go round it.")
    String lead();

    @Message("Shut")
    String term();

    @Message("Set when it is shut")
    String see();

    @Message("Times")
    String times();

    @Message("This home is never shut as far as anybody knows.")
    String none();

    @Message("over")
    String over();

    @Message("Open again from")
    String opens();

    @Message("It is open again")
    String open();

    @Message("It will be shut")
    String add();

    @Message("From")
    String from();

    @Message("Open again on")
    String until();

    @Message("Left empty: until somebody says so.")
    String until_hint();

    @Message("Heat off")
    String heat_off();

    @Message("Water drained")
    String water_drained();

    @Message("What to know")
    String note();

    @Message("Who looks in, what must stay on, where the valve is.")
    String note_hint();

    @Message("Keep")
    String keep();

    @Message("Visits that have a day on which it is shut")
    String booked();

    @Message("Give another day")
    String move();

    @Message("Visits with no day left on which it is open")
    String no_day();

    @Message("from {first} to {last}")
    String between(String first, String last);

    @Message("The home is shut on this day.")
    String on_this_day();
}
