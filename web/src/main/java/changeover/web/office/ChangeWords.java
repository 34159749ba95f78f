package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words around what was changed; the columns' own words stand in {@code changeover/changes_….properties}. */
@MessageBundle("change")
public interface ChangeWords {

    @Message("What changed here")
    String heading();

    @Message("Entered by {who} on {when}.")
    String entered(String who, String when);

    @Message("Entered on {when}.")
    String entered_then(String when);

    @Message("added")
    String added();

    @Message("taken away")
    String taken_away();

    @Message("Older changes")
    String older();

    @Message("Newer changes")
    String newer();

    @Message("Nothing was changed since it was written.")
    String none();

    @Message("No older change.")
    String no_more();

    @Message("nothing")
    String nothing();

    @Message("The prices")
    String prices();

    @Message("Fees, reminders and serving")
    String fees();

    @Message("The taxes")
    String taxes();

    @Message("What stands on your paper")
    String business();

    @Message("The seasons")
    String seasons();

    @Message("The intervals of your own")
    String intervals();

    @Message("The kinds and tasks of your own")
    String kinds();
}
