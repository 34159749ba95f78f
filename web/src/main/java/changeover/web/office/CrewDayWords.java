package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of a day that is laid over the whole crew. */
@MessageBundle("crewday")
public interface CrewDayWords {

    @Message("The day over the whole crew")
    String heading();

    @Message(
            "The least road for everybody together. What the customer was told, what has begun and where two go keep their"
                    + " hour and their technician; any other visit goes to somebody who holds the tickets it needs.")
    String lead();

    @Message("Lay it over the whole crew")
    String lay();

    @Message("This day has begun; it is ordered technician by technician.")
    String begun();

    @Message("Nothing better was found: either nobody has a visit, or the hours that stay leave no room for all of it.")
    String none();

    @Message("The solver gave no answer; this was reckoned plainly.")
    String plain();

    @Message("It is laid with the least road found already.")
    String best();

    @Message("Keep this day")
    String keep();
}
