package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages of money. */
@MessageBundle("money")
public interface MoneyWords {

    @Message("Money")
    String heading();

    @Message("Take a payment")
    String take();

    @Message("Drafts that may be issued")
    String ready();

    @Message("No draft waits. Drafts come by themselves when a plan is sold or a visit is closed.")
    String none_ready();

    @Message("Issue the chosen ones")
    String issue_chosen();

    @Message("Issue the invoice")
    String issue();

    @Message("Issue the credit note")
    String issue_credit();

    @Message("Drafts that wait")
    String waiting();

    @Message("for the first visit")
    String awaiting();

    @Message("for a price: the price book has none for a part")
    String unpriced();

    @Message("until {day}")
    String later(String day);

    @Message("nothing to charge")
    String nothing();

    @Message("Owed to us")
    String owed();

    @Message("Owed for")
    String owed_for();

    @Message("Amount")
    String amount();

    @Message("not yet due")
    String not_due();

    @Message("up to 30 days")
    String late30();

    @Message("31 to 60 days")
    String late60();

    @Message("61 to 90 days")
    String late90();

    @Message("longer")
    String older();

    @Message("Kept for customers, deposits included: {amount}.")
    String credit_kept(String amount);

    @Message("Owed without a document: {amount}, given back from a payment that did not hold.")
    String owed_beyond(String amount);

    @Message("Late")
    String late();

    @Message("{days} days")
    String days(long days);

    @Message("one day")
    String one_day();

    @Message("Nothing is late.")
    String none_late();

    @Message("Open")
    String open();

    @Message("Nothing else is open.")
    String none_open();

    @Message("due {day}")
    String due(String day);

    @Message("All documents")
    String all();

    @Message("Who owes")
    String who();

    @Message("Nobody owes anything.")
    String nobody();

    @Message("Invoice")
    String invoice();

    @Message("Credit note")
    String credit();

    @Message("Draft")
    String draft();

    @Message("draft, before tax")
    String draft_before_tax();

    @Message("Customer")
    String customer();

    @Message("Work done at")
    String work();

    @Message("Date")
    String date();

    @Message("To be paid by")
    String due_label();

    @Message("Purchase order")
    String purchase_order();

    @Message("Quantity")
    String quantity();

    @Message("What")
    String what();

    @Message("Price")
    String price();

    @Message("Discount")
    String discount();

    @Message("Before tax")
    String before_tax();

    @Message("Total")
    String total();

    @Message("Still to pay")
    String still();

    @Message("Issued {day}")
    String issued(String day);

    @Message("Paid")
    String paid();

    @Message("Credited in full")
    String credited();

    @Message("Open the PDF")
    String pdf();

    @Message("Credit in full")
    String credit_full();

    @Message("Credit a part")
    String credit_part();

    @Message("Why")
    String why();

    @Message("The reason stands on the credit note.")
    String why_hint();

    @Message("Amount before tax to give back on this line")
    String credit_line();

    @Message("It cannot be issued yet")
    String not_yet();

    @Message("Payment of {name}")
    String payment_of(String name);

    @Message("Day")
    String day();

    @Message("How")
    String way();

    @Message("Reference")
    String reference();

    @Message("Cheque number, name on the transfer")
    String reference_hint();

    @Message("Note")
    String note();

    @Message("Keep the payment")
    String keep_payment();

    @Message("Statement")
    String statement();

    @Message("Balance")
    String balance();

    @Message("brought forward")
    String before();

    @Message("payment")
    String payment();

    @Message("refund")
    String refund();

    @Message("payment undone")
    String undone();

    @Message("Undo")
    String undo();

    @Message("This payment did not hold")
    String undo_heading();

    @Message("the bank sent it back")
    String bounced();

    @Message("it was noted by mistake")
    String mistake();

    @Message("Undo the payment")
    String undo_verb();

    @Message("Choose who pays")
    String choose();

    @Message("Price book")
    String prices();

    @Message("Letters and mail")
    String mail();
}
