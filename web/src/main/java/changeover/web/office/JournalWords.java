package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the journal, its account codes and the closed days. */
@MessageBundle("journal")
public interface JournalWords {

    @Message("Journal")
    String heading();

    @Message("Take as CSV")
    String file();

    @Message("Account")
    String account();

    @Message("Debit")
    String debit();

    @Message("Credit")
    String credit();

    @Message("Both sides")
    String sum();

    @Message("no code yet")
    String no_code();

    @Message("Account codes")
    String codes();

    @Message("{count} of these accounts have no code of yours yet.")
    String missing(int count);

    @Message("One of these accounts has no code of yours yet.")
    String missing_one();

    @Message(
            "The codes your accountant uses. They stand in the file beside each posting; an empty field leaves the cell empty.")
    String codes_words();

    @Message("Keep the codes")
    String keep();

    @Message("Nothing moved in these days.")
    String nothing();

    @Message("{count} entries. What was earned of plans and what is kept for customers is booked on the last day.")
    String entries(int count);

    @Message("Words")
    String words();

    @Message("Document")
    String document();

    @Message("No posting in these days.")
    String no_posting();

    @Message("Closed days")
    String periods();

    @Message("Closed up to {day}, that day too.")
    String closed(String day);

    @Message("No day is closed.")
    String none_closed();

    @Message("Close up to")
    String close_until();

    @Message("Nothing is issued and no payment noted on a closed day any more.")
    String close_hint();

    @Message("Close these days")
    String close();

    @Message("Closings")
    String closings();

    @Message("closed {day} by {name}")
    String closed_by(String day, String name);

    @Message("opened again {day} by {name}")
    String reopened_by(String day, String name);

    @Message("Why they are opened again")
    String why();

    @Message("Open again")
    String reopen();

    @Message("No days were closed yet.")
    String no_closing();
}
