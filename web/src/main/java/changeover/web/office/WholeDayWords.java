package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of a whole day that moves to later days. */
@MessageBundle("wholeday")
public interface WholeDayWords {
    @Message("Print the day’s sheets")
    String sheets();

    @Message("Print tomorrow’s sheets")
    String tomorrows_sheets();

    @Message("Move the whole day")
    String heading();

    @Message(
            "For a storm or a breakdown: each visit goes to the first later day on which it disturbs nobody, whose last day is near first. What has begun stays.")
    String lead();

    @Message("Whose day")
    String whose();

    @Message("Nobody ticked means everybody.")
    String whose_hint();

    @Message("To the days from")
    String first();

    @Message("to")
    String last();

    @Message("See where they go")
    String see();

    @Message("Nothing is left to move on this day.")
    String nothing();

    @Message("Where they go")
    String where();

    @Message("to {day}, {hour}, {name}")
    String goes(String day, String hour, String name);

    @Message("goes back to the season: no place in these days")
    String back();

    @Message("goes back to the season: two go there, give it a day by hand")
    String together();

    @Message("not kept: {task}, last day {day}")
    String unkept(String task, String day);

    @Message("not kept: {tasks}")
    String unkept_all(String tasks);

    @Message("its window is over on {day}")
    String over(String day);

    @Message("its window is over")
    String window_over();

    @Message("Move them")
    String moving();

    @Message("What for")
    String cause();

    @Message("The customers are told this, each in their own language.")
    String cause_hint();

    @Message("In your own words")
    String why();

    @Message("For the office alone; may be left empty.")
    String why_hint();

    @Message(
            "Whoever was told an hour gets one message with their new hours, and counts as told. Whoever has no mail, has no new day, or would come today or tomorrow is listed to be rung.")
    String consequence();

    @Message("Move the day, and write to the customers")
    String move();

    @Message("What became of it")
    String became();

    @Message("written to")
    String written();

    @Message("to ring")
    String to_ring();

    @Message("To ring")
    String rings();
}
