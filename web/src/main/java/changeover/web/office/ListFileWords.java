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

    @Message("What to beware of in homes")
    String hazards();

    @Message("When homes are shut")
    String shut_times();

    @Message("What households do themselves")
    String household_tasks();

    @Message("What was to follow a visit")
    String follow_ups();

    @Message("Corrected visits")
    String amendments();

    @Message("Machines not to be used")
    String stops();

    @Message("What a stopped machine asks of us")
    String duties();

    @Message("Free return visits")
    String return_visits();

    @Message("Lines of estimates")
    String estimate_lines();

    @Message("Parts fitted")
    String parts_used();

    @Message("Parts left or posted")
    String parts_given();

    @Message("Parts sent back")
    String part_returns();

    @Message("Claims to makers")
    String claims();

    @Message("Every movement of parts")
    String stock_movements();

    @Message("People and their tickets")
    String people();

    @Message("Instruments and their calibrations")
    String instruments();

    @Message("Partners and their papers")
    String partners();

    @Message("Visits given to partners")
    String partner_visits();

    @Message("The business’s own papers")
    String papers();

    @Message("Lines of invoices")
    String invoice_lines();

    @Message("Taxes of invoices")
    String invoice_taxes();

    @Message("Deposits and what is left of them")
    String deposits();

    @Message("What was written off")
    String write_offs();

    @Message("Lists as files")
    String money_heading();

    @Message("Documents and money, each list as a CSV file with a line of titles.")
    String money_words();

    @Message("The journal, the tax report and what is earned have files of their own on their pages.")
    String money_more();
}
