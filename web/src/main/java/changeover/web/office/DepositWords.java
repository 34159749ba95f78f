package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of money that is taken before the work. */
@MessageBundle("deposit")
public interface DepositWords {

    @Message("Deposits")
    String heading();

    @Message(
            "Money taken before the work. It is the customer’s until it pays an invoice; the invoice charges the taxes.")
    String lead();

    @Message("No deposit is kept. Take one from the customer’s page, under Money.")
    String none();

    @Message("Take a deposit")
    String take();

    @Message("Take a deposit of {name}")
    String take_of(String name);

    @Message("Home of the work")
    String home();

    @Message("{name} pays for no home yet. Write on the home’s page who pays.")
    String no_home(String name);

    @Message("Agreement")
    String agreement();

    @Message("If it is taken for one; of the same home")
    String agreement_hint();

    @Message("Call")
    String call();

    @Message("If the work answers one; of the same home")
    String call_hint();

    @Message("none")
    String none_of_them();

    @Message("See the agreement")
    String see_agreement();

    @Message("See the call")
    String see_call();

    @Message("What it is for")
    String what_for();

    @Message("As the receipt says it")
    String what_for_hint();

    @Message("Keep the deposit")
    String keep();

    @Message("Deposit no. {number}")
    String title(long number);

    @Message("Receipt as PDF")
    String receipt();

    @Message("Received")
    String amount();

    @Message("On invoices")
    String applied();

    @Message("Given back")
    String back();

    @Message("Still kept")
    String left();

    @Message("Pay an invoice with it")
    String apply();

    @Message("Empty: as much as fits")
    String apply_hint();

    @Message("Nothing of this customer is open.")
    String nothing_open();

    @Message("Give it back")
    String give_back();

    @Message("Nothing is left of it.")
    String used_up();
}
