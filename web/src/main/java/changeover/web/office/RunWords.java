package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of billing runs. */
@MessageBundle("run")
public interface RunWords {

    @Message("Billing run")
    String heading();

    @Message("Issue all drafts of a day")
    String all();

    @Message("Date on the invoices")
    String day();

    @Message("Not before the last invoice’s date, and not ahead of today.")
    String day_hint();

    @Message("Look at this day")
    String look();

    @Message("Issue them")
    String start();

    @Message("{count} drafts would be issued")
    String would(int count);

    @Message("one draft would be issued")
    String would_one();

    @Message("No draft may be issued on that day.")
    String none();

    @Message("Together, tax included")
    String together();

    @Message("Stay drafts, and why")
    String stay();

    @Message("No e-mail address: they get a letter to print")
    String letters();

    @Message(
            "Each gets its number, its paper is made and its mail leaves by itself. An issued invoice never changes again.")
    String what_happens();

    @Message("Earlier runs")
    String earlier();

    @Message("No run was made yet.")
    String no_run();

    @Message("Begun by {name}")
    String by(String name);

    @Message("going on")
    String running();

    @Message("halted")
    String halted();

    @Message("done")
    String done();

    @Message("{done} of {all} drafts")
    String progress(int done, int all);

    @Message("Issued")
    String issued();

    @Message("Joined into another invoice")
    String joined();

    @Message("Stayed drafts")
    String refused();

    @Message("Papers still to be made")
    String papers();

    @Message("It goes on by itself, also when this page is closed. Load the page again to see how far it is.")
    String goes_on();

    @Message("Halt the run")
    String halt();

    @Message("What is issued stays issued; the rest stay drafts.")
    String halt_hint();

    @Message("What it issued")
    String list();

    @Message("Nothing is issued yet.")
    String nothing_yet();

    @Message("What for")
    String kind();

    @Message("Documents")
    String documents();

    @Message("All kinds")
    String all_kinds();

    @Message("Plans and their instalments")
    String plans();

    @Message("Visits")
    String visits();

    @Message("Fees")
    String fees();

    @Message("Deposits")
    String deposits();

    @Message("Credit notes")
    String credits();

    @Message("and one more line")
    String one_more();

    @Message("and {lines} more lines")
    String more(int lines);

    @Message("Odd: look at these first")
    String odd();

    @Message("More than three times what this customer’s visits usually come to: {usual} before tax.")
    String above_customer(String usual);

    @Message("More than three times what documents of this plan usually ask: {usual} before tax.")
    String above_plan(String usual);

    @Message("The home has a document for another visit of the same day.")
    String twice_a_day();

    @Message("A line that is to be paid stands at nought.")
    String at_nought();

    @Message("One draft has nothing to charge: it is never issued.")
    String nothing_one();

    @Message("{drafts} drafts have nothing to charge: they are never issued.")
    String nothing(int drafts);
}
