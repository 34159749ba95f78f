package changeover.web.field;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of a task and of closing, as the technician reads them. */
@MessageBundle("sheetmsg")
public interface SheetWords {

    @Message("Unit")
    String unit();

    @Message("yes")
    String yes();

    @Message("no")
    String no();

    @Message("A day, 2027-03-31, or a month, 2027-03")
    String day_or_month();

    @Message("Below {edge} {unit}.")
    String below(String edge, String unit);

    @Message("Above {edge} {unit}.")
    String above(String edge, String unit);

    @Message("Not as expected.")
    String off();

    @Message("Expected: {band} {unit}")
    String expected(String band, String unit);

    @Message("Last time, {day}: {value} {unit}")
    String last_time(String value, String unit, String day);

    @Message("The task itself")
    String task_itself();

    @Message("Why")
    String reason();

    @Message("Needed when it is not done today")
    String reason_hint();

    @Message("Put off for the cold?")
    String put_off_for();

    @Message("Too cold outside")
    String too_cold();

    @Message("Something else")
    String something_else();

    @Message("What you found")
    String found();

    @Message("Write down what was found")
    String write_found();

    @Message("Keep what was found")
    String keep_found();

    @Message("Take it back")
    String take_back();

    @Message("What do you call it?")
    String what_level();

    @Message("Nothing found")
    String nothing();

    @Message("Sentence for the report")
    String sentence();

    @Message("In my own words, or nothing")
    String own_words();

    @Message("In your words, for the report")
    String in_your_words();

    @Message("These words are in")
    String language_of_words();

    @Message("English")
    String english();

    @Message("French")
    String french();

    @Message("Told to")
    String told_to();

    @Message("Their answer")
    String answer();

    @Message("Agreed")
    String agreed();

    @Message("Said no")
    String declined();

    @Message("What is next")
    String what_next();

    @Message("Nothing more")
    String nothing_more();

    @Message("Come back")
    String come_back();

    @Message("Make an estimate")
    String make_estimate();

    @Message("Part used")
    String part_used();

    @Message("The business carries no part yet.")
    String no_parts();

    @Message("Part, and how many the van holds")
    String part();

    @Message("None")
    String no_part();

    @Message("How many")
    String quantity();

    @Message("What for")
    String part_why();

    @Message("The plan")
    String why_plan();

    @Message("A repair")
    String why_repair();

    @Message("An extra")
    String why_extra();

    @Message("Warranty")
    String why_warranty();

    @Message("Why more than the van held")
    String short_why();

    @Message("Only when the van held less")
    String short_hint();

    @Message("Keep, next is: {task}")
    String keep_next(String task);

    @Message("Keep, then close the visit")
    String keep_close();

    @Message("Closing the visit")
    String closing();

    @Message("Not answered yet")
    String still_open();

    @Message("Every task is answered.")
    String every_task_answered();

    @Message("Everything not said is done")
    String rest_done();

    @Message("Your time")
    String your_time();

    @Message("Minutes at the home")
    String minutes_here();

    @Message("{count} planned. Left blank, it is counted from when you came.")
    String minutes_hint(int count);

    @Message("Of these, minutes beyond what the visit is for")
    String extra_minutes();

    @Message("What for")
    String extra_why();

    @Message("Who received it")
    String who_received();

    @Message("Received by")
    String received_by();

    @Message("Or why nobody")
    String nobody_why();

    @Message("A word for the household")
    String note();

    @Message("Why more was used than the van held")
    String short_at_close();

    @Message("Close the visit")
    String close();

    @Message("The report and the invoice follow by themselves.")
    String close_note();

    @Message("It ran otherwise")
    String ran_otherwise();

    @Message("How it ran")
    String how_it_ran();

    @Message("The figure is then kept, not judged")
    String how_it_ran_hint();

    @Message("Keep and add a photo")
    String keep_photo();

    @Message("Photos")
    String photos_title();

    @Message("Photo")
    String photo();

    @Message("JPEG or PNG, at most 20 MB; it goes onto the report")
    String photo_hint();

    @Message("What it shows")
    String photo_of();

    @Message("The task, no finding")
    String photo_of_task();

    @Message("Caption")
    String caption();

    @Message("Keep the photo")
    String keep_photo_now();

    @Message("Back to the task")
    String back_to_task();

    @Message("No photo was taken.")
    String no_photo();

    @Message("1 photo")
    String one_photo();

    @Message("{count} photos")
    String photos(int count);
}
