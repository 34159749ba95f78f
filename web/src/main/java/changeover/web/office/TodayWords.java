package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of today's page, of the season and of a visit. */
@MessageBundle("day")
public interface TodayWords {

    @Message("Today")
    String heading();

    @Message(
            "Nothing is here yet. Add the first home, write a plan, then sell it: the year’s visits come by themselves.")
    String first();

    @Message("Add a home")
    String add_home();

    @Message("Take a payment")
    String take_payment();

    @Message("Late")
    String late();

    @Message("Nothing is late.")
    String none_late();

    @Message("Due")
    String due();

    @Message("Nothing is due this month without a day.")
    String none_due();

    @Message("All that are due")
    String all_due();

    @Message("{count} visits today, {closed} of them over.")
    String visits_today(int count, int closed);

    @Message("One visit today.")
    String one_visit_today();

    @Message("No visit stands in today’s plan.")
    String no_visit_today();

    @Message("See the day")
    String see_day();

    @Message(
            "{#if count == 1}One promise of an agreement in force is kept by no visit.{#else}{count} promises of agreements in force are kept by no visit.{/if}")
    String unkept(int count);

    @Message("last day was {day}")
    String last_was(String day);

    @Message("{days} days")
    String days(long days);

    @Message("one day")
    String one_day();

    @Message("No day yet.")
    String no_day();

    @Message("Set a day")
    String set_day();

    @Message("Open the visit")
    String open_visit();

    @Message("Open")
    String open();

    @Message("Waiting for an answer")
    String waiting();

    @Message("Still to be read")
    String unread();

    @Message(
            "Visited, and no machine is promised anything yet: add what was found, then say on the house card that everything is read.")
    String unread_next();

    @Message("Add a machine")
    String add_machine();

    @Message("Nobody owes an answer.")
    String none_waiting();

    @Message("All offers")
    String all_waiting();

    @Message("offer, {price} a year, term from {day}")
    String offer(String price, String day);

    @Message("renewal to offer by {day}, term ends {last}")
    String renew_by(String day, String last);

    @Message("should have been offered by {day}, term ends {last}")
    String renew_late(String day, String last);

    @Message("Open the offer")
    String open_offer();

    @Message("Renew")
    String renew();

    @Message("The season")
    String season();

    @Message("Season plan")
    String season_plan();

    @Message("Hours of visits by week, {from} to {until}")
    String weeks_title(String from, String until);

    @Message("No week holds more than the crew can carry.")
    String weeks_fit();

    @Message(
            "{#if count == 1}One week holds more than the crew can carry: {hours} hours must move.{#else}{count} weeks hold more than the crew can carry: {hours} hours must move.{/if}")
    String weeks_over(int count, long hours);

    @Message("The weeks as a table")
    String weeks_table();

    @Message("Week of")
    String week_of();

    @Message("closed")
    String closed();

    @Message("has a day")
    String with_day();

    @Message("no day yet")
    String without_day();

    @Message("what the crew can carry")
    String capacity();

    @Message("Money owed")
    String money();

    @Message("Who owes")
    String who_owes();

    @Message("late")
    String money_late();

    @Message("not yet due")
    String money_open();

    @Message("Owed to us")
    String owed();

    @Message("Documents")
    String homes();

    @Message("Amount")
    String amount();

    @Message(
            "{#if count == 1}One draft to issue, {amount} before tax.{#else}{count} drafts to issue, {amount} before tax.{/if}")
    String drafts(int count, String amount);

    @Message("Look and issue")
    String issue();

    @Message("Not sent")
    String not_sent();

    @Message("{#if count == 1}One letter waits to be sent.{#else}{count} letters wait to be sent.{/if}")
    String letters(int count);

    @Message("{#if count == 1}One letter waits to be printed.{#else}{count} letters wait to be printed.{/if}")
    String to_print(int count);

    @Message("Read why")
    String read_why();

    @Message("Nobody’s work stands on this day.")
    String empty_day();

    @Message("Choose another day")
    String other_day();

    @Message("Day")
    String day();

    @Message("Show")
    String show();

    @Message("{minutes} min")
    String minutes(int minutes);

    @Message("tasks: {count}")
    String tasks(int count);

    @Message("To load")
    String load();

    @Message("Visit")
    String visit();
}
