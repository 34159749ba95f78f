package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of giving days to a whole season. */
@MessageBundle("spread")
public interface SeasonDaysWords {

    @Message("Give the season’s days")
    String heading();

    @Message(
            "Whoever must be seen first chooses first; each gets the first day on which somebody with the tickets has the hours. A visit that has a day keeps it. Roads are not reckoned.")
    String lead();

    @Message("Season")
    String season();

    @Message("See what it would give")
    String look();

    @Message("{season}, {first} to {last}")
    String opening(String season, String first, String last);

    @Message("Every visit of this season has a day already.")
    String nothing_open();

    @Message("{given} of {all} visits {#if given == 1}gets{#else}get{/if} a day, from {first} to {last}.")
    String gives(int given, int all, String first, String last);

    @Message("{#if all == 1}The one visit gets no day.{#else}None of the {all} visits gets a day.{/if}")
    String gives_none(int all);

    @Message("{left} {#if left == 1}gets{#else}get{/if} none:")
    String gets_none(int left);

    @Message("{count}: the window is over")
    String window_over(int count);

    @Message("{count}: nobody here holds the ticket that it needs")
    String no_ticket(int count);

    @Message("{count}: nobody has the hours free in its window")
    String no_hours(int count);

    @Message("Give these days")
    String accept();

    @Message("Back to the season")
    String back();

    @Message("The first {shown} of them")
    String first_shown(int shown);

    @Message("What gets a day")
    String given();

    @Message("What gets none")
    String not_given();

    @Message("the window is over")
    String why_window_over();

    @Message("nobody holds the ticket")
    String why_no_ticket();

    @Message("nobody has the hours")
    String why_no_hours();

    @Message("until {day}")
    String until(String day);
}
