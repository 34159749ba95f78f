package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of what is owed from before the take-over. */
@MessageBundle("opening")
public interface OpeningWords {

    @Message("Owed from before")
    String heading();

    @Message(
            "What customers owed when you came here, taxes included. It stands on their statements and in their balances from its own day; it is no invoice of yours, its taxes are not reported again, and nothing here reminds of it.")
    String words();

    @Message("Since")
    String since();

    @Message("Customer")
    String customer();

    @Message("What for")
    String what();

    @Message("Amount, taxes included")
    String amount();

    @Message("Take away")
    String remove();

    @Message("Nothing is owed from before. Enter a debt from the customer’s own page of money.")
    String none();

    @Message("To money")
    String to_money();

    @Message("Together")
    String together();

    @Message("Enter what {name} owes")
    String enter(String name);

    @Message("Keep")
    String keep();

    @Message("Brought over from before:")
    String from_before();
}
