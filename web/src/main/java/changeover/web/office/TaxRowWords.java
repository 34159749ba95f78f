package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the taxes: what a row holds for, and a rate that waits for the owner's yes. */
@MessageBundle("taxrow")
public interface TaxRowWords {

    @Message("Confirm a rate")
    String confirm();

    @Message(
            "We wrote these rates from memory. None of them is put on a document before you have read it in a source yourself.")
    String confirm_lead();

    @Message("Every rate of the table has a source that was read.")
    String none_to_confirm();

    @Message("Rate")
    String rate();

    @Message("The day on which you read it")
    String read_on();

    @Message("I have read it")
    String confirm_verb();

    @Message("from memory, issues nothing yet")
    String from_memory();

    @Message("confirmed by you")
    String confirmed();

    @Message("since {day}")
    String since(String day);

    @Message("Use of the building")
    String property();

    @Message("Kind of work")
    String work();

    @Message("How the price was agreed")
    String form();

    @Message("all")
    String all();

    @Message("Last day")
    String last_day();

    @Message("Empty while it has none")
    String last_day_hint();

    @Message(
            "A document carries the taxes of the place of the work, on the earlier of its day and the day it was paid.")
    String place_and_day();

    @Message("What will be charged there")
    String charged();

    @Message("From {day} on, in {place}:")
    String charged_from(String day, String place);

    @Message("Show what will be charged")
    String look();

    @Message(
            "A row under the same code takes the place of the shipped one; a tax under another code is charged beside it.")
    String code_hint();

    @Message("End a row of yours")
    String end();

    @Message("Documents of later days no longer carry it; what was issued stays as it is.")
    String end_lead();

    @Message("Row")
    String row();

    @Message("Give it its last day")
    String end_verb();

    @Message("until {day}")
    String until(String day);

    @Message("all cases")
    String all_cases();

    @Message("{percent}%")
    String percent(String percent);
}
