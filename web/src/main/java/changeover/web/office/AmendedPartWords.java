package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of hours, readings and parts that are put right on a closed visit. */
@MessageBundle("amendpart")
public interface AmendedPartWords {

    @Message("They came on")
    String came_on();

    @Message(
            "An hour of leaving before the hour of coming is one of the next day. Minutes that were told stay as they are told below.")
    String came_hint();

    @Message("not read")
    String not_read();

    @Message("A part that was forgotten")
    String forgotten();

    @Message("Part")
    String part();

    @Message("the van of whoever was there")
    String their_van();

    @Message("Why more than that place held")
    String short_why();

    @Message("Only where the place held less than is written here")
    String short_hint();
}
