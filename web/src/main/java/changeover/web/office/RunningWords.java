package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what the business's own work costs it. */
@MessageBundle("running")
public interface RunningWords {
    @Message("What your work costs")
    String figures();

    @Message(
            "Figures from a day on: the time to set up at a visit, overhead, and where trips begin. Only the owner sees them.")
    String figures_lead();

    @Message("An hour of a technician")
    String hour_heading();

    @Message("It costs {amount}, since {day}.")
    String hour_is(String amount, String day);

    @Message("What it costs is not written down yet: give the hour of labour a cost.")
    String hour_unknown();

    @Message("In the price book")
    String in_price_book();

    @Message("Figures so far")
    String figures_since();

    @Message("Nothing is written down yet: write the figures that hold today.")
    String no_figures();

    @Message("From")
    String from();

    @Message("Set-up")
    String set_up();

    @Message("Overhead")
    String overhead();

    @Message("Trips begin at")
    String trips_begin();

    @Message("{minutes} min")
    String min(int minutes);

    @Message("{percent}% of all other costs")
    String percent_of_rest(String percent);

    @Message("{amount} an hour")
    String an_hour(String amount);

    @Message("not written down")
    String place_unknown();

    @Message("For days before the first figures, the first ones count.")
    String before_first();

    @Message("Figures from a day on")
    String write_figures();

    @Message("First day")
    String first_day();

    @Message("Minutes of set-up at each visit")
    String set_up_minutes();

    @Message("Parking, carrying in, covering floors, writing down")
    String set_up_hint();

    @Message("How overhead is laid on")
    String overhead_way();

    @Message("Percent of all other costs")
    String way_percent();

    @Message("An amount for each hour of work and road")
    String way_hour();

    @Message("Rent, office, vans, insurance: a percentage or an amount, as chosen above")
    String overhead_hint();

    @Message("Degrees north of the shop")
    String latitude();

    @Message("Degrees east of the shop")
    String longitude();

    @Message("Trips are reckoned from here; west is below nought. Without it a trip costs what the price book says.")
    String place_hint();

    @Message("Keep the figures")
    String keep();
}
