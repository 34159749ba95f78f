package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the holidays that a business keeps. */
@MessageBundle("holidays")
public interface HolidayWords {

    @Message("Holidays")
    String heading();

    @Message("On those that are ticked nobody works, no day is planned, and minutes of a call count as a holiday’s.")
    String lead();

    @Message("Closed on")
    String closed();

    @Message(
            "What the law of your place asks, and what people are owed who work on a holiday, is the business’s to know.")
    String law();

    @Message("Keep")
    String keep();

    @Message("Choose the holidays")
    String choose();
}
