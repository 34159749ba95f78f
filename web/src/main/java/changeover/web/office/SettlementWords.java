package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of an agreement that ends in mid-term. */
@MessageBundle("settle")
public interface SettlementWords {

    @Message("Settle it")
    String link();

    @Message("What ending would cost")
    String question();

    @Message("Settle agreement no. {number}")
    String heading(int number);

    @Message(
            "Every way is worked through before anything is posted. The credit notes are written as drafts; nothing is given back before you issue them.")
    String lead();

    @Message("It ended on {day}.")
    String ended(String day);

    @Message("The reason: {why}.")
    String because(String why);

    @Message("It was settled on {day}: {kept} is kept, and earned.")
    String settled(String day, String kept);

    @Message("It holds. If it ended on {day}:")
    String would_end(String day);

    @Message("Price")
    String price();

    @Message("Invoiced, less what was credited")
    String billed();

    @Message("Paid, taxes in")
    String paid();

    @Message("Rule of the place")
    String rule();

    @Message("No rule of the place is known; the agreement’s own terms hold.")
    String own_terms();

    @Message("from memory")
    String from_memory();

    @Message("Way")
    String way();

    @Message("by days")
    String pro_rata();

    @Message("by work done")
    String work_done();

    @Message("by days, and work done besides")
    String pro_rata_less_work();

    @Message("as the place asks")
    String chosen();

    @Message("We keep")
    String kept();

    @Message("Credited before tax")
    String credit();

    @Message("Credited with taxes")
    String total();

    @Message("Money to give back")
    String give_back();

    @Message("Kept and not invoiced yet")
    String still_to_bill();

    @Message("of {label}: {net}, and {tax} of taxes")
    String part(String label, String net, String tax);

    @Message("Instalments not invoiced yet")
    String waiting();

    @Message("Instalment {number}: {net}")
    String instalment(int number, String net);

    @Message(
            "When the agreement is settled they fall, as far as they ask for more than is kept: the first stay, the one in which that ends is lessened to the rest of it.")
    String waiting_how();

    @Message("Why, as the credit note says it")
    String why();

    @Message("Write the credit notes")
    String write();

    @Message("End the agreement first; then it can be settled.")
    String end_first();

    @Message("Show this day")
    String show();
}
