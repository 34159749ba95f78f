package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of homes that look like one. */
@MessageBundle("alike")
public interface AlikeWords {

    @Message("Homes that look like one")
    String heading();

    @Message(
            "The same street and number, or the same number, person and telephone. You say whether they are one: machines, agreements and visits to come move to the home that lives on, what happened stays where it is. For a day it can be undone.")
    String words();

    @Message("No two homes look like one.")
    String none();

    @Message("To the homes")
    String to_homes();

    @Message("Common")
    String common();

    @Message("same street and number")
    String street();

    @Message("same person")
    String person();

    @Message("same telephone")
    String telephone();

    @Message("The first lives on")
    String first();

    @Message("The second lives on")
    String second();

    @Message("They are two")
    String apart();

    @Message("and {count} more, when these are answered")
    String more(int count);

    @Message("Merged")
    String merged();

    @Message("{other} went into {home}.")
    String went(String other, String home);

    @Message("Undo it")
    String undo();

    @Message("Can be undone until {until}.")
    String until(String until);

    @Message("Can no longer be undone.")
    String over();

    @Message("This home went into")
    String gone();

    @Message("What happened before stands here.")
    String gone_words();

    @Message("Merged with")
    String came();

    @Message("What happened there before the merge stands on its own card.")
    String came_words();
}
