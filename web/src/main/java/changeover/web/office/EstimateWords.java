package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of repair estimates: written, offered, answered, and what follows a yes. */
@MessageBundle("estimate")
public interface EstimateWords {

    @Message("Estimates")
    String heading();

    @Message("Estimate")
    String estimate();

    @Message("What a repair will cost, said before it is made. Its yes is the most that the work may ask.")
    String lead();

    @Message("To write")
    String to_write();

    @Message("A visit left something to be estimated.")
    String left_by_visit();

    @Message("Waiting")
    String waiting();

    @Message("Over")
    String over();

    @Message("No estimate waits. Write one on a home’s card, a call or a visit.")
    String none_waiting();

    @Message("No estimate is over yet.")
    String none_over();

    @Message("No estimate was written for this home.")
    String none_home();

    @Message("The next {count}")
    String next(int count);

    @Message("Write an estimate")
    String write();

    @Message("Open")
    String open();

    @Message("Draft of an estimate")
    String draft();

    @Message("Estimate {label}")
    String title(String label);

    @Message("until {day}")
    String until(String day);

    @Message("expires soon")
    String soon();

    @Message("Change the draft")
    String change();

    @Message("Offer it")
    String offer();

    @Message("Take it back")
    String take_back();

    @Message("As PDF")
    String pdf();

    @Message("Offered on {day}")
    String offered_on(String day);

    @Message("It can’t be offered yet")
    String not_yet();

    @Message("Customer")
    String customer();

    @Message("Home")
    String home();

    @Message("Call")
    String call();

    @Message("the call that it answers")
    String see_call();

    @Message("Found in")
    String visit();

    @Message("the visit that found it")
    String see_visit();

    @Message("What will be done")
    String words();

    @Message("Valid until")
    String valid_until();

    @Message("Deposit asked")
    String deposit();

    @Message("none")
    String none();

    @Message("Quantity")
    String quantity();

    @Message("What")
    String what();

    @Message("Price")
    String price();

    @Message("Discount")
    String discount();

    @Message("Amount")
    String amount();

    @Message("Before taxes")
    String before_tax();

    @Message("Total")
    String total();

    @Message("no price")
    String no_price();

    // Writing it

    @Message("Minutes of labour")
    String minutes();

    @Message("Counted and rounded like those of a visit")
    String minutes_hint();

    @Message("The trip too, where the price book has a fee for it")
    String trip();

    @Message("Parts")
    String parts();

    @Message("Part {number}")
    String part(int number);

    @Message("Part")
    String which_part();

    @Message("choose")
    String choose();

    @Message("Lines of your own")
    String others();

    @Message("Line {number}")
    String line(int number);

    @Message("In your words")
    String line_words();

    @Message("Unit")
    String unit();

    @Message("one")
    String one();

    @Message("Price each, before taxes")
    String unit_price();

    @Message("Work")
    String work();

    @Message("upkeep")
    String maintenance();

    @Message("repair")
    String repair();

    @Message("installation")
    String installation();

    @Message("Two rows more each time you keep it.")
    String more_rows();

    @Message("Taken after the yes, before the work; may stay empty")
    String deposit_hint();

    @Message("Keep the draft")
    String keep();

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

    @Message("One estimate waits for an answer.")
    String open_one();

    @Message("{count} estimates wait for an answer.")
    String open_some(int count);

    @Message("One expires soon.")
    String soon_one();

    @Message("{count} expire soon.")
    String soon_some(int count);

    @Message("See the estimates")
    String see_all();
}
