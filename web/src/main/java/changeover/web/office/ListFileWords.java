package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of the business's lists as files. */
@MessageBundle("lists")
public interface ListFileWords {

    @Message("Your lists as files")
    String heading();

    @Message(
            "Everything that is kept here, each list as a CSV file with a line of titles. Homes come with their machines in a file that can be brought in again.")
    String words();

    @Message("List")
    String list();

    @Message("Download")
    String take();

    @Message("Homes with their machines")
    String homes();

    @Message("Customers")
    String customers();

    @Message("Who signs, pays and lives where")
    String people_of_homes();

    @Message("Machines, those taken out too")
    String machines();

    @Message("Plans")
    String plans();

    @Message("Agreements")
    String agreements();

    @Message("Visits")
    String visits();

    @Message("Tasks of visits")
    String tasks();

    @Message("When each task was done")
    String done();

    @Message("Last times still to be read")
    String to_be_read();

    @Message("Readings")
    String readings();

    @Message("Findings")
    String findings();

    @Message("Calls")
    String calls();

    @Message("Estimates")
    String estimates();

    @Message("Parts on order")
    String part_orders();

    @Message("What lies on the shelf and in the vans")
    String stock();

    @Message("Invoices and credit notes")
    String invoices();

    @Message("Payments")
    String payments();

    @Message("What each payment pays")
    String what_payments_pay();

    @Message("Prices")
    String prices();
}
