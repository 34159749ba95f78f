package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of planning a season and of its answer. */
@MessageBundle("planning")
public interface PlanningWords {
    @Message("Plan the season")
    String heading();

    @Message(
            "Every open visit whose days meet those of the season gets a day, an hour and a technician: the most urgent first, neighbours on one day, no week crammed while another is empty. What is late goes first into the season that is under way. Or you are told which visits find no day, and what would give them one. Asking changes nothing; days are given when you accept them.")
    String lead();

    @Message("Season")
    String season();

    @Message("First day that may be given")
    String from();

    @Message("Try it with another crew")
    String try_it();

    @Message("Leave all of this as it is to plan with the crew that you have.")
    String try_hint();

    @Message("Without")
    String without();

    @Message("nobody left out")
    String without_nobody();

    @Message("Technicians more")
    String more();

    @Message("none")
    String none();

    @Message("More from")
    String more_from();

    @Message("More until, last day")
    String more_last();

    @Message("What they would hold")
    String more_tickets();

    @Message("Nobody works on")
    String idle();

    @Message("Plan it")
    String start();

    @Message("Asked before")
    String before();

    @Message("No season was planned yet. Choose one and plan it.")
    String none_before();

    @Message("the crew as it stands")
    String as_it_is();

    @Message("without {name}")
    String left_out(String name);

    @Message("{#if count == 1}one technician more{#else}{count} technicians more{/if} from {first} to {last}")
    String more_hands(int count, String first, String last);

    @Message("nobody on a {day}")
    String no_day(String day);

    @Message("being planned")
    String running();

    @Message("stopped")
    String halted();

    @Message("planned")
    String done();

    @Message("{name}, {day}")
    String asked_by(String name, String day);

    @Message(
            "{done} of {all} rounds, {without} of {visits} {#if visits == 1}visit{#else}visits{/if} without a day so far")
    String progress(int done, int all, int without, int visits);

    @Message("It goes on by itself, even when you leave this page.")
    String goes_on();

    @Message("Stop and keep what was found")
    String halt();

    @Message("{#if visits == 1}The visit has its day.{#else}All {visits} visits have a day.{/if}")
    String all_kept(int visits);

    @Message(
            "{#if count == 1}One of them is late, its days are over: it stands{#else}{count} of them are late, their days are over: they stand{/if} in the first days.")
    String late(int count);

    @Message("Every promise of the season has its visit.")
    String promises_kept();

    @Message(
            "{#if count == 1}One promise of the season is kept by no visit.{#else}{count} promises of the season are kept by no visit.{/if}")
    String promises_unkept(int count);

    @Message("Promises that no visit keeps")
    String promises();

    @Message("Days that cannot be given any more")
    String left_out_title();

    @Message("These visits wait for another day; all the others are given. Plan the season again to find them one.")
    String left_out_lead();

    @Message("the hour is over")
    String why_past();

    @Message("the days of the visit were moved")
    String why_window_moved();

    @Message("the home is shut on that day")
    String why_home_shut();

    @Message("somebody who would go works here no more by then")
    String why_left();

    @Message("somebody who would go does not work on that day")
    String why_day_off();

    @Message("the hour was given away meanwhile")
    String why_hour_taken();

    @Message("{left} of {visits} {#if visits == 1}visit finds{#else}visits find{/if} no day.")
    String not_kept(int left, int visits);

    @Message(
            "{#if days == 1}One technician-day more would keep {visits} of them.{#else}{days} technician-days more would keep {visits} of them.{/if}")
    String days_would(int days, int visits);

    @Message(
            "{#if visits == 1}One of them needs only{#else}{visits} of them need only{/if} somebody of the crew with: {tickets}.")
    String tickets_would(int visits, String tickets);

    @Message(
            "{day}: {#if technicians == 2}two technicians{#else}one technician{/if}{#if tickets} with {tickets}{/if}, {#if visits == 1}one visit{#else}{visits} visits{/if}")
    String a_day_more(String day, int technicians, String tickets, int visits);

    @Message("This crew is only thought of. Days of whoever does not work here are never given.")
    String tried();

    @Message("Give all these days")
    String accept_all();

    @Message("{count} of its days {#if count == 1}was{#else}were{/if} given")
    String accepted(int count);

    @Message("What cannot be kept")
    String unkept();

    @Message("The first {shown} of {all}")
    String first_of(int shown, int all);

    @Message("its last day is over, or before the first that may be given")
    String why_window_over();

    @Message("nobody works on any day of its window")
    String why_nobody_works();

    @Message("nobody who works then holds the ticket")
    String why_no_ticket();

    @Message("two must go, and never two work together then")
    String why_no_second();

    @Message("it is longer, with the road, than any day")
    String why_too_long();

    @Message("the hours are given to others")
    String why_no_hours();

    @Message("until {day}")
    String until(String day);

    @Message("The weeks, in hours")
    String weeks();

    @Message("Week of")
    String week_of();

    @Message("What the crew holds")
    String holds();

    @Message("Given before")
    String booked();

    @Message("Planned")
    String planned();

    @Message("Left")
    String left();

    @Message("Days of the week of {day}")
    String week_title(String day);

    @Message("No day of this week is planned.")
    String empty_week();

    @Message("{minutes} min on the road")
    String road(int minutes);

    @Message("has its day")
    String given();

    @Message("not given: only thought of")
    String thought_of();

    @Message("Give the days that are ticked")
    String accept_ticked();

    @Message("Untick what should wait. A visit’s day can be moved on its own page once it is given.")
    String accept_hint();

    @Message("Driving that these days add: {hours} h")
    String driving(String hours);

    @Message("Roads are those of the table of roads.")
    String roads_table();

    @Message("The table of roads did not answer: roads are reckoned as the crow flies.")
    String roads_crow_for_table();
}
