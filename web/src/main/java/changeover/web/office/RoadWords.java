package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of how roads are reckoned, and of homes to which none is. */
@MessageBundle("roads")
public interface RoadWords {

    @Message("Roads")
    String heading();

    @Message(
            "The way from home to home counts in every day, season and price. Without a table of roads it is reckoned from the straight line, lengthened, at one speed.")
    String lead();

    @Message("A table of roads is installed here; this counts for the roads it does not know.")
    String table();

    @Message("The pace")
    String pace();

    @Message("The road over the straight line, in percent")
    String detour();

    @Message("130 means three tenths longer; where a river or a mountain is between the homes, more")
    String detour_hint();

    @Message("Speed from door to door, in km/h")
    String speed();

    @Message("With lights, ice and looking for a place to park")
    String speed_hint();

    @Message("Ten kilometres as the crow flies come to {minutes} minutes.")
    String ten(long minutes);

    @Message("Plans and days count with it from the next time they are planned.")
    String from_now();

    @Message("Keep the pace")
    String keep();

    @Message("Homes on no map")
    String off_heading();

    @Message("No road is reckoned to them, neither in a day nor in a price. Write down their latitude and longitude.")
    String off_lead();

    @Message("Every home is on the map.")
    String none_off();

    @Message("The first {shown} of {count}.")
    String first_of(int shown, int count);
}
