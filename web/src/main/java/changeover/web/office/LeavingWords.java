package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of somebody who leaves: what they had, and where it goes. */
@MessageBundle("leaving")
public interface LeavingWords {
    @Message("{name} leaves")
    String heading(String name);

    @Message(
            "From the last day to the empty van: what is left to do stands below. The name stays on everything that was made until then.")
    String lead();

    @Message("Leaving")
    String link();

    @Message("Last day")
    String last_day();

    @Message("The last day is {day}. The sign-in and the calendar links close when it is over.")
    String is(String day);

    @Message("The last day was {day}. The sign-in and the calendar links are closed.")
    String was(String day);

    @Message("No last day is written. Nothing is handed over before it is.")
    String none();

    @Message("Keep the last day")
    String keep_day();

    @Message("Visits after the last day")
    String visits();

    @Message("goes along")
    String along();

    @Message("Hand them over")
    String hand_over();

    @Message(
            "Whoever was told an hour keeps it with another technician, nobody else is moved, and what finds no place goes back to the season. Each customer is listed to be rung; where they only went along, somebody else who is free goes along, or must be named.")
    String hand_over_means();

    @Message("Nothing has a day after it.")
    String no_visits();

    @Message("{name} leaves")
    String why(String name);

    @Message("On call after the last day")
    String turns();

    @Message("to {last}")
    String until(String last);

    @Message("Name somebody else")
    String other_turn();

    @Message("The van")
    String van();

    @Message(
            "Count what lies in it. What is written goes to the other place, and the van is in use no longer; the difference is booked with its reason.")
    String van_means();

    @Message("{part}, should be {quantity}")
    String should(String part, String quantity);

    @Message("Where it goes")
    String to();

    @Message("Count and empty the van")
    String empty();

    @Message("No van of theirs is in use.")
    String no_van();

    @Message("The van is empty.")
    String van_is_empty();

    @Message("Nothing is left to do.")
    String done();

    @Message("{count} to do")
    String to_do(int count);
}
