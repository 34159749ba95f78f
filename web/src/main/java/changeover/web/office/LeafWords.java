package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of long lists of documents. */
@MessageBundle("leaf")
public interface LeafWords {

    @Message("Previous page")
    String before();

    @Message("Next page")
    String after();

    @Message("{first} to {last} of {count} are shown; a sum is that of all.")
    String shown(int first, int last, int count);

    @Message("The last of {count} is shown; a sum is that of all.")
    String last(int count);

    @Message("The first {shown} of {count} are shown.")
    String first_of(int shown, int count);

    @Message("See all {count}")
    String all(int count);

    @Message("Ticked are the first {shown} of {count} drafts; a billing run issues all of them.")
    String ticked(int shown, int count);

    @Message("{count} documents")
    String documents(int count);

    @Message("One document")
    String one_document();

    @Message("Together {amount}")
    String together(String amount);

    @Message("before tax")
    String before_tax();

    @Message("waits")
    String waits();

    @Message("Drafts with nothing to charge")
    String nothing();

    @Message("Which")
    String which();

    @Message("Everything issued")
    String issued();

    @Message("Number or customer")
    String sought();

    @Message("Where it stands")
    String stands();

    @Message("Show")
    String show();

    @Message("No document is like that. Choose others, or look for another number or name.")
    String none();

    @Message("Nothing was issued yet. Drafts wait under Money.")
    String nothing_issued();

    @Message("To Money")
    String to_money();
}
