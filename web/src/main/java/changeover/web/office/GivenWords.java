package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of parts that a home gets between visits. */
@MessageBundle("given")
public interface GivenWords {

    @Message("Filters and pads between visits")
    String heading();

    @Message("Left at the home or posted: they go out of stock and count as those that the plan gives.")
    String lead();

    @Message("Nothing was left here or posted yet.")
    String none();

    @Message("Day")
    String day();

    @Message("Part")
    String part();

    @Message("How many")
    String quantity();

    @Message("How")
    String how();

    @Message("left at the home")
    String left();

    @Message("posted")
    String posted();

    @Message("Out of")
    String place();

    @Message("Give one")
    String give();

    @Message("Write it down")
    String keep();
}
