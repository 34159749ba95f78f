package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Words for money that goes back, comes back or is kept, and for the fees of it. */
@MessageBundle("paying")
public interface PayingWords {

    @Message("Give money back")
    String give_back();

    @Message("Give money back to {name}")
    String give_back_to(String name);

    @Message("Kept for them: {amount}. No more can go back.")
    String at_most(String amount);

    @Message("Nothing is kept for them, so nothing can go back.")
    String nothing_kept();

    @Message("What is kept for them, {amount}, is a deposit. A deposit is given back on its own page.")
    String kept_as_deposit(String amount);

    @Message("See the deposits")
    String see_deposits();

    @Message("Amount given back")
    String amount_back();

    @Message("In cash the whole credit is {amount}.")
    String in_cash(String amount);

    @Message("In cash everything together is {amount}.")
    String all_in_cash(String amount);

    @Message("Number of the cheque or of the transfer")
    String reference_hint();

    @Message("Note the refund")
    String keep_refund();

    @Message("Pay what is open from the credit")
    String use_credit();

    @Message("returned by the bank")
    String returned();

    @Message("The bank returned it")
    String returned_do();

    @Message(
            "A fee that is fixed in advance may be forbidden here where the customer is a consumer. Ask before you set one.")
    String caution();

    @Message("Fees for returned payments and reminders")
    String fees();

    @Message(
            "Nothing is asked in a place until it stands here with the reason it may be: the law, or the clause of your agreement. Where the place forbids a fee, or your agreement does not name its amount, leave it out.")
    String fees_lead();

    @Message("Nothing is asked anywhere. A returned payment is only open again.")
    String no_fees();

    @Message("From")
    String from();

    @Message("Asked for")
    String kind();

    @Message("a returned payment")
    String kind_returned();

    @Message("a reminder")
    String kind_reminder();

    @Message("Place")
    String place();

    @Message("Country and region of the home, like CA-ON")
    String place_hint();

    @Message("Amount before tax; nought ends the fee")
    String fee_amount();

    @Message("Why it may be asked")
    String source();

    @Message("The law or the clause, and what your lawyer or accountant said. It stands on the invoice’s line.")
    String source_hint();

    @Message("Set the fee")
    String set_fee();

    @Message("asked no more")
    String ended();

    @Message("Choose none to pay the oldest first; what is left is kept as a credit.")
    String choose_some();

    @Message("The same reason in French")
    String why_french();

    @Message("The credit note is French first; left empty, it says the reason as written above.")
    String why_french_hint();

    @Message("Not issued yet")
    String drafts();

    @Message(
            "Money for one of these pays it when it is issued. Its taxes are those of the day the money came, if that is earlier.")
    String drafts_hint();
}
