package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of repair estimates: written, offered, answered, and what follows a yes. */
@MessageBundle("estimate")
public interface EstimateWords {

    @Message("Estimates")
    String heading();

    @Message("What a repair will cost, said before it is made. Its yes is the most that the work may ask.")
    String lead();

    @Message("To write")
    String to_write();

    @Message("A visit left something to be estimated.")
    String left_by_visit();

    @Message("Waiting")
    String waiting();

    @Message("Accepted, without a visit")
    String to_do();

    @Message("The customer said yes, and nobody goes there yet. Open it and give it a visit.")
    String to_do_lead();

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

    @Message("one")
    String one();

    @Message("Price each, before taxes")
    String unit_price();

    @Message("Work")
    String work();

    @Message("Two rows more each time you keep it.")
    String more_rows();

    @Message("Taken after the yes, before the work; may stay empty")
    String deposit_hint();

    @Message("Keep the draft")
    String keep();

    @Message("How the price is agreed")
    String form();

    @Message("parts and labour apart")
    String form_separate();

    @Message("one sum for everything")
    String form_lump_sum();

    @Message(
            "Both decide the taxes, here and on the draft of the visit that does the work. The lines in your own words come onto that draft by themselves, once.")
    String decides_taxes();
}
