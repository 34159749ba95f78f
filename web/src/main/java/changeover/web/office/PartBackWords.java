package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of parts that go back, and of the credits that suppliers owe for them. */
@MessageBundle("partback")
public interface PartBackWords {

    @Message("Credits that suppliers owe")
    String credits();

    @Message("Went back")
    String back();

    @Message("Send it back")
    String send_back();

    @Message("Send back, {part}")
    String send_back_of(String part);

    @Message("Wrong or not needed: it goes to a place of ours or back to the supplier, who then owes a credit.")
    String back_lead();

    @Message("Lies")
    String lies();

    @Message("Goes to")
    String goes_to();

    @Message("the supplier")
    String to_supplier();

    @Message("wrong part")
    String wrong();

    @Message("not needed")
    String unused();

    @Message("faulty")
    String faulty();

    @Message("Credit expected")
    String credit();

    @Message("Only from a supplier.")
    String credit_hint();

    @Message("Keep the return")
    String keep_back();

    @Message("to {place}")
    String to_place(String place);

    @Message("{credit} expected")
    String credit_expected(String credit);

    @Message("no amount was said")
    String no_credit_said();

    @Message("credited {amount} on {day}")
    String credited(String amount, String day);

    @Message("credit refused on {day}")
    String refused(String day);

    @Message("Credit of {supplier}")
    String credit_of(String supplier);

    @Message("The supplier’s answer")
    String answer();

    @Message("It is")
    String it_is();

    @Message("credited")
    String is_credited();

    @Message("refused")
    String is_refused();

    @Message("Day")
    String day();

    @Message("Amount")
    String credited_amount();

    @Message("Their words")
    String their_words();

    @Message("Keep the answer")
    String keep_answer();
}
