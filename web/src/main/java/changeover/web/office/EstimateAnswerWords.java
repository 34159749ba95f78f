package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what follows an estimate: its answer, the work, later yeses, deposits, and what may be signed on the spot. */
@MessageBundle("answered")
public interface EstimateAnswerWords {

    // Its answer

    @Message("Answer")
    String answer();

    @Message("Write down their answer")
    String write_answer();

    @Message("They say")
    String they_say();

    @Message("Yes")
    String yes();

    @Message("No")
    String no();

    @Message("Who said it")
    String by_name();

    @Message("On")
    String day();

    @Message("At")
    String time();

    @Message("How it reached us")
    String channel();

    @Message("In a call with the office")
    String by_call();

    @Message("Signed on the spot")
    String by_site();

    @Message("What they said")
    String said();

    @Message("Keep their answer")
    String keep_answer();

    @Message("{what} by {who}, {when}")
    String answered(String what, String who, String when);

    @Message("Why it is taken back")
    String why();

    @Message("It is then on no list of waiting ones, and nobody can say yes to it.")
    String back_lead();

    // After a yes

    @Message("Work")
    String work_done();

    @Message("Accepted before taxes")
    String accepted();

    @Message("Give it a visit")
    String give_visit();

    @Message("No visit does it yet.")
    String no_visit();

    @Message("In which visit is it done?")
    String which_visit();

    @Message("a new visit")
    String new_visit();

    @Message("Minutes planned, for a new visit")
    String visit_minutes();

    @Message("At the latest on, for a new visit")
    String visit_last();

    @Message("Keep the visit")
    String keep_visit();

    @Message("Its draft invoice asks {asked} before taxes; {left} is left of the yes.")
    String charged(String asked, String left);

    @Message("It goes {amount} beyond what was accepted, and is not issued without a new yes.")
    String beyond(String amount);

    @Message("See the draft")
    String see_draft();

    @Message("Write down a yes to more")
    String more();

    @Message("Yes to more")
    String more_heading();

    @Message(
            "The customer hears the new amount first. In Quebec they say it by their own link or in a call with the office.")
    String more_lead();

    @Message("The whole amount from now on, before taxes")
    String more_amount();

    @Message("What it is for")
    String more_words();

    @Message("Keep the new yes")
    String keep_more();

    @Message("Ask for a yes to more")
    String ask_more();

    @Message("The question goes to the customer with their own page, where they say yes or no themselves.")
    String ask_lead();

    @Message("Send the question")
    String ask_send();

    @Message("Asked on {day} for {whole} in all, before taxes.")
    String asked_for(String whole, String day);

    @Message("waits for their answer")
    String asked_waits();

    @Message("No, said {who}.")
    String said_no(String who);

    @Message("Take this answer back")
    String undo();

    @Message(
            "For an answer written on the wrong estimate. It stays to be read, and the estimate waits for its answer again.")
    String undo_lead();

    @Message("Why it was wrong")
    String undo_why();

    @Message("Answers taken back")
    String undone();

    @Message("An answer of {who}, {when}, was taken back by {by}:")
    String was_undone(String who, String when, String by);

    @Message("Deposits")
    String deposits();

    @Message("Take the deposit")
    String take_deposit();

    @Message("Deposit no. {number}")
    String deposit_number(long number);

    @Message("still kept: {amount}")
    String still_kept(String amount);

    @Message("used up")
    String used_up();

    @Message("Keep the deposit")
    String keep_deposit();

    // Signing on the spot

    @Message("Signing repairs on the spot")
    String consents();

    @Message(
            "Where the law keeps a repair from being signed at the home, the customer says yes by their own link or in a call with the office.")
    String consents_lead();

    @Message("The law here")
    String law();

    @Message("No row of this place keeps a repair from being signed at the home.")
    String no_law();

    @Message("What you have set")
    String set();

    @Message("Nothing is set.")
    String nothing_set();

    @Message("Place")
    String place();

    @Message("Country and region, CA-QC")
    String place_hint();

    @Message("From")
    String from();

    @Message("A repair under a visit the customer asked for")
    String allowed();

    @Message("may be signed on the spot")
    String may();

    @Message("is not signed on the spot")
    String may_not();

    @Message("Where you read it")
    String source();

    @Message("The page, the letter, who wrote it and when")
    String source_hint();

    @Message("Keep the rule")
    String keep_rule();

    // On the day's page

    @Message("One estimate is to be written.")
    String write_one();

    @Message("{count} estimates are to be written.")
    String write_some(int count);

    @Message("One estimate waits for an answer.")
    String open_one();

    @Message("{count} estimates wait for an answer.")
    String open_some(int count);

    @Message("One that was accepted has no visit.")
    String to_do_one();

    @Message("{count} that were accepted have no visit.")
    String to_do_some(int count);

    @Message("One expires soon.")
    String soon_one();

    @Message("{count} expire soon.")
    String soon_some(int count);

    @Message("See the estimates")
    String see_all();
}
