package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of what is owed from before the take-over. */
@MessageBundle("opening")
public interface OpeningWords {

    @Message("Owed and prepaid from before")
    String heading();

    @Message(
            "What customers owed or had paid ahead when you came here, taxes included. A debt stands on their statements and among what is owed by its age; it is no invoice of yours, so its taxes are not reported again and no reminder is sent for it: ring, or send a statement. The journal takes it out of the old books on the day of the take-over.")
    String words();

    @Message("Since")
    String since();

    @Message("A debt’s own day; what was prepaid is kept from the day of the take-over.")
    String since_hint();

    @Message("Which")
    String which();

    @Message("Owed")
    String owed();

    @Message("Prepaid")
    String prepaid();

    @Message("It is kept for the customer and pays what is issued to them next.")
    String prepaid_words();

    @Message("Undo")
    String undo();

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

    @Message("Enter what {name} owes or has prepaid")
    String enter(String name);

    @Message("Keep")
    String keep();

    @Message("Brought over from before:")
    String from_before();
}
