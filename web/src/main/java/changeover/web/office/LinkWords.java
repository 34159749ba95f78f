package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page that makes and takes back a customer's link. */
@MessageBundle("link")
public interface LinkWords {

    @Message("Customer’s own link")
    String heading();

    @Message(
            "Whoever has the link reads this customer’s visits, reports and invoices, without signing in. Give it to nobody else.")
    String lead();

    @Message("A link opens until {day}.")
    String lasts(String day);

    @Message("No link opens this customer’s page today.")
    String none();

    @Message("Make a link")
    String make();

    @Message("Take back every link")
    String revoke();

    @Message("The link, shown once")
    String shown();

    @Message("Copy it now and send it to {name}. We keep only what lets us recognise it.")
    String shown_lead(String name);

    @Message("Back to the customer")
    String back();

    @Message("Customer")
    String customer();
}
