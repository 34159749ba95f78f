package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of a day that changes: its order, one visit more, somebody who is ill, and who must be rung. */
@MessageBundle("changed")
public interface ChangedWords {
    @Message("The day’s order")
    String order();

    @Message(
            "The order with the least road. What the customer was told, what has begun and where two go keep their hour.")
    String order_lead();

    @Message("Order the day")
    String see_order();

    @Message("{minutes} min on the road, {before} min as it stands")
    String roads(int minutes, int before);

    @Message("It cannot be driven better: the hours that stay cannot all be kept with the road between them.")
    String no_order();

    @Message("It is driven in this order already.")
    String in_order();

    @Message("Nobody has a visit on this day.")
    String nobody();

    @Message("leaves at {hour}")
    String leaves(String hour);

    @Message("back at {hour}")
    String back(String hour);

    @Message("lunch at {hour}")
    String lunch(String hour);

    @Message("{minutes} min of road")
    String road(int minutes);

    @Message("was {hour}")
    String was(String hour);

    @Message("stays")
    String stays();

    @Message("Keep this order")
    String keep_order();

    @Message("The customer was told this hour")
    String told();

    @Message("They were told it")
    String tell();

    @Message("the customer was told")
    String is_told();

    @Message("Fit it in")
    String fit_in();

    @Message("The three ways that disturb the day least. Nobody who was told an hour is moved.")
    String fit_lead();

    @Message("Day")
    String day();

    @Message("See the ways")
    String see_ways();

    @Message("No technician with its tickets can take it on this day without moving an hour that was told.")
    String no_way();

    @Message("Two must go, and no two of the crew with its tickets are free at the same hour on this day.")
    String no_way_for_two();

    @Message("Two go together: each way names both, at one hour.")
    String two_go();

    @Message("on call, outside the hours of the crew")
    String on_call();

    @Message("{name}, {starts} to {ends}")
    String way(String name, String starts, String ends);

    @Message("{road} min more on the road; nobody is moved.")
    String costs(int road);

    @Message(
            "{road} min more on the road; {#if moved == 1}one visit begins{#else}{moved} visits begin{/if} later, {later} min in all:")
    String costs_moved(int road, int moved, int later);

    @Message("{from} becomes {to}")
    String moves(String from, String to);

    @Message("Take this way")
    String take();

    @Message("Somebody is ill")
    String ill();

    @Message(
            "The day of {name} is shared out: whoever was told an hour keeps it, nobody else is moved, and what finds no place goes back to the season.")
    String ill_lead(String name);

    @Message("goes to {name}, {hour}")
    String goes_to(String name, String hour);

    @Message("goes to {name} and {second}, {hour}")
    String goes_to_two(String name, String second, String hour);

    @Message("{name} goes along instead")
    String goes_along(String name);

    @Message("stays with whoever leads, and wants somebody else to go along")
    String wants_second();

    @Message("goes back to the season")
    String goes_back();

    @Message("Share it out, and list who must be rung")
    String share();

    @Message("Nothing is open on this day.")
    String nothing_open();

    @Message("To ring")
    String rings();

    @Message("These visits are not as they were. Whoever was told an hour stands first.")
    String rings_lead();

    @Message("{#if count == 1}One customer must be rung.{#else}{count} customers must be rung.{/if}")
    String to_ring(int count);

    @Message("Nobody must be rung.")
    String no_rings();

    @Message("was {day}, {hour}, {name}")
    String was_all(String day, String hour, String name);

    @Message("now {day}, {hour}, {name}")
    String now_all(String day, String hour, String name);

    @Message("has no day now")
    String now_none();

    @Message("They know")
    String rung();

    @Message("Ill")
    String why_ill();

    @Message(
            "Roads are reckoned as the crow flies: the table of roads has not answered yet. It is being asked; look again in a moment.")
    String crow_for_table();
}
