package changeover.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the layouts and of the shared parts of a page; each audience's pages bring their own. */
@MessageBundle
public interface Messages {

    // The eight tabs

    @Message("Today")
    String today();

    @Message("Homes")
    String homes();

    @Message("Season")
    String season();

    @Message("Plans")
    String plans();

    @Message("Agreements")
    String agreements();

    @Message("Money")
    String money();

    @Message("Parts")
    String parts();

    @Message("Shop")
    String shop();

    // The layouts

    @Message("Skip to the page")
    String skip();

    @Message("Pages")
    String pages();

    @Message("Find a home")
    String find();

    @Message("Name, street, phone or serial")
    String find_by();

    @Message("Sign out")
    String sign_out();

    @Message("Français")
    String other_language();

    @Message("Rehearsal: here the day is {day}, and nothing goes out.")
    String rehearsal(String day);

    @Message("Back")
    String back();

    @Message("not sent")
    String not_sent();

    @Message("Follow local codes. Licensed people for gas, electricity and refrigerant.")
    String follow_codes();

    @Message(
            "Smell of gas or a carbon monoxide alarm: get out, then call 911. Leave gas, electricity and refrigerant to licensed people, by your local codes.")
    String smell_of_gas();

    // Pencil, ink, stamp

    @Message("pencilled")
    String pencilled();

    @Message("promised")
    String promised();

    @Message("closed")
    String closed();

    @Message("late")
    String late();

    // Four levels, and the caution that is none

    @Message("For your information")
    String information();

    @Message("Recommended")
    String recommended();

    @Message("Urgent")
    String urgent();

    @Message("Do not use")
    String do_not_use();

    @Message("Before you open")
    String before_you_open();

    // Forms

    @Message("Keep")
    String keep();

    @Message("Leave as it was")
    String leave();

    @Message("{#if count == 1}One answer has to be written again.{#else}{count} answers have to be written again.{/if}")
    String wrong_answers(int count);

    @Message("Go to the first.")
    String first_wrong();

    @Message("may stay empty")
    String may_stay_empty();

    // Tags

    @Message("Air goes left")
    String air_left();

    @Message("Air goes right")
    String air_right();

    @Message("Air goes up")
    String air_up();

    @Message("Air goes down")
    String air_down();

    @Message("Arrow up")
    String arrow_up();

    // The year

    @Message("Read it as a table")
    String as_table();

    @Message("promised: inside these days")
    String key_promised();

    @Message("stamped: visit closed")
    String key_closed();

    @Message("pencilled: visit has a day")
    String key_pencilled();

    @Message("asked to move")
    String key_moving();

    @Message("past its last day")
    String key_late();

    @Message("done by the household")
    String key_household();

    // The weeks

    @Message("has a day")
    String key_has_day();

    @Message("no day yet")
    String key_no_day();

    @Message("what the crew can carry")
    String key_carries();

    @Message("over")
    String key_over();

    // Lists

    @Message("Page before")
    String page_before();

    @Message("Page after")
    String page_after();

    @Message("Print")
    String print();

    @Message("You read here what the books rest on; nothing can be written.")
    String reads_only();
}
