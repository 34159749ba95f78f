package changeover.web.session;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the hours of a week, for whoever worked them and for the office. */
@MessageBundle("hours")
public interface HoursWords {
    @Message("Hours of the week")
    String heading();

    @Message("Week of {monday}")
    String week(String monday);

    @Message(
            "From the first arrival to the last leaving, as the visits say. A gap of more than three hours between two visits is your own time; what runs past midnight stands on the day on which it began. Correct what was otherwise, then sign.")
    String own_lead();

    @Message(
            "As the visits say, corrected and signed by who worked them. A gap of more than three hours between two visits is no working time; what runs past midnight stands on the day on which it began.")
    String office_lead();

    @Message("Day")
    String day();

    @Message("Visits")
    String visits();

    @Message("From")
    String from();

    @Message("Until")
    String until();

    @Message("Hours")
    String hours();

    @Message("corrected: {why}")
    String corrected(String why);

    @Message("Together")
    String together();

    @Message("Correct a day")
    String correct();

    @Message("Hours worked")
    String worked();

    @Message("As a number: 7.5 is seven and a half.")
    String worked_hint();

    @Message("Why")
    String why();

    @Message("Keep the correction")
    String keep();

    @Message("Sign the week: {hours} h")
    String sign(String hours);

    @Message("Signed")
    String signed();

    @Message("Signed before it was corrected")
    String signed_before();

    @Message("Not signed yet")
    String not_signed();

    @Message("The week before")
    String before();

    @Message("The week after")
    String after();

    @Message("As a table (CSV)")
    String csv();

    @Message("Nobody worked in this week.")
    String nobody();

    @Message("Name")
    String name();
}
