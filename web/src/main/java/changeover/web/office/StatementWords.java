package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Words for statements of a period. */
@MessageBundle("stated")
public interface StatementWords {

    @Message("Statements")
    String heading();

    @Message(
            "To everybody whose balance moved in these days or stands open at their end. Each gets it by mail, or as a letter in one batch.")
    String lead();

    @Message("From")
    String from();

    @Message("Until")
    String until();

    @Message("Show")
    String show();

    @Message("Who gets one")
    String whom();

    @Message("Nothing moved in these days and nothing is open.")
    String nobody();

    @Message("Make and send the chosen")
    String send();

    @Message("Statements of {name}")
    String of(String name);

    @Message("Make and send it")
    String make();

    @Message("Made")
    String made();

    @Message("No statement was made yet.")
    String none_made();

    @Message("{first} to {last}")
    String period(String first, String last);

    @Message("made {day}")
    String made_on(String day);
}
