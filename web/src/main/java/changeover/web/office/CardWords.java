package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the house card. */
@MessageBundle("card")
public interface CardWords {

    @Message("Homes")
    String homes();

    @Message("house card")
    String crumb();

    @Message("Set a visit")
    String set_visit();

    @Message("Print the card")
    String print_card();

    @Message("Print the tags")
    String print_tags();

    @Message("Change the home")
    String edit();

    @Message("People")
    String people();

    @Message("Who is what here")
    String people_all();

    @Message("Nobody yet. Say who signs and who lets us in.")
    String nobody();

    @Message("signs")
    String signs();

    @Message("pays")
    String pays();

    @Message("lives here")
    String lives();

    @Message("lets us in")
    String lets_in();

    @Message("gets the report")
    String gets_report();

    @Message("Getting in")
    String getting_in();

    @Message("Nothing is written yet.")
    String getting_in_none();

    @Message("Hazards, keys and codes")
    String getting_in_all();

    @Message("Hazard")
    String hazard();

    @Message("Dog")
    String dog();

    @Message("Ladder not to be trusted")
    String ladder();

    @Message("Suspected asbestos")
    String asbestos();

    @Message("Beware")
    String other();

    @Message("seen {day}")
    String seen(String day);

    @Message("Keys and codes")
    String keys();

    @Message("Keys and codes:")
    String keys_are();

    @Message("Taken out:")
    String taken_out();

    @Message("key")
    String key();

    @Message("code")
    String code();

    @Message("alarm")
    String alarm();

    @Message("Why you need them")
    String why_show();

    @Message("Show the codes")
    String show();

    @Message("Print the card with them")
    String print_with();

    @Message("Kept with your name and the hour.")
    String show_hint();

    @Message("Shown once, to you. Close this page when you have read them.")
    String shown_once();

    @Message("Back to the card")
    String back_to_card();

    @Message("Agreement")
    String agreement();

    @Message("No agreement.")
    String no_deal();

    @Message("Offer a plan")
    String offer();

    @Message("{first} to {last}")
    String term(String first, String last);

    @Message("Accepted {day}")
    String accepted(String day);

    @Message("offered, waiting for a yes")
    String offered();

    @Message("over")
    String over();

    @Message("ended early")
    String ended();

    @Message("Building")
    String building();

    @Message("Seen {day}.")
    String found(String day);

    @Message("Told to {who}.")
    String told(String who);

    @Message("They said no for now.")
    String said_no();

    @Message("The year")
    String year();

    @Message("Read it as a table")
    String as_table_all();

    @Message("Nothing is promised here yet. A plan brings the year’s visits by itself.")
    String no_year();

    @Message("What hangs on the machines")
    String tags();

    @Message("Add a machine")
    String add_machine();

    @Message("No machine yet.")
    String no_machines();

    @Message("The plates are to be read at the first visit.")
    String to_be_read();

    @Message(
            "Somebody was here and the machines are still to be read: add what was found, then say that everything is read.")
    String still_to_be_read();

    @Message("Everything is read")
    String all_read();

    @Message(
            "The agreement then promises the plan’s tasks for these machines, and the year’s visits are laid out again. The agreed price stays.")
    String all_read_hint();

    @Message("Common to the building")
    String common();

    @Message("All its facts")
    String all_facts();

    @Message("The year as a table")
    String table();

    @Message("the same marks, in words")
    String table_more();

    @Message("Last day")
    String last_day();

    @Message("Machine")
    String machine();

    @Message("Promised")
    String promised();

    @Message("Visit")
    String visit();

    @Message("Standing")
    String standing();

    @Message("closed")
    String closed();

    @Message("By the household")
    String household();

    @Message("done {day}")
    String done(String day);

    @Message("not done")
    String not_done();

    @Message("to come")
    String to_come();

    @Message("What was done")
    String which_done();

    @Message("Who did it")
    String who_did();

    @Message("Which day")
    String which_day();

    @Message("Write as done")
    String mark_done();
}
