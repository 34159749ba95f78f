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

    @Message("residential")
    String residential();

    @Message("commercial")
    String commercial();

    @Message("maintenance")
    String maintenance();

    @Message("repair")
    String repair();

    @Message("installation")
    String installation();

    @Message("a fee, no work")
    String fee();

    @Message("a plan for a term")
    String plan();

    @Message("parts and labour apart")
    String separate();

    @Message("one sum for everything")
    String lump_sum();

    @Message("Last day")
    String last_day();

    @Message("Empty while it has none")
    String last_day_hint();

    @Message(
            "A document carries the taxes of the place of the work, on the earlier of its day and the day it was paid.")
    String place_and_day();
}
