package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages of customers and of what they are to a home. */
@MessageBundle("who")
public interface WhoWords {

    @Message("Who is what here")
    String people();

    @Message("Part")
    String part();

    @Message("Name")
    String name();

    @Message("From")
    String from();

    @Message("Until")
    String until();

    @Message("still")
    String still();

    @Message("Purchase order")
    String order();

    @Message("Their reference")
    String reference();

    @Message("On every invoice, so that it finds its way in their house")
    String reference_hint();

    @Message("Their tax number")
    String tax_number();

    @Message("Where they account for a tax themselves")
    String tax_number_hint();

    @Message("signs")
    String signs();

    @Message("pays")
    String pays();

    @Message("lives here")
    String lives();

    @Message("lets us in")
    String lets_in();

    @Message("gets the report")
    String gets_report();

    @Message("Last day")
    String last_day();

    @Message("Ends")
    String end();

    @Message("Nobody yet. Add who signs, pays and lives here.")
    String none();

    @Message("Add somebody")
    String add();

    @Message("Somebody already known here")
    String find();

    @Message("A part of the name, telephone or mail address")
    String find_hint();

    @Message("Look")
    String find_do();

    @Message("Nobody is called “{text}” here. Write a new one below.")
    String nobody_found(String text);

    @Message("Who")
    String choose();

    @Message("Somebody new, written below")
    String new_one();

    @Message("What they are to this home")
    String parts();

    @Message("Whoever signed or paid until then stops that day.")
    String parts_hint();

    @Message("Keep")
    String keep();

    @Message("Customer")
    String customer();

    @Message("Change the customer")
    String edit();

    @Message("Telephone")
    String phone();

    @Message("Mail address")
    String email();

    @Message("Language")
    String language();

    @Message("Invoices go to")
    String bill_to();

    @Message("the home")
    String bill_home();

    @Message("Left empty, invoices go to the home.")
    String bill_hint();

    @Message("Invoices for several homes")
    String invoices_how();

    @Message("one for all")
    String one();

    @Message("one for each")
    String each();

    @Message("Notes")
    String notes();

    @Message("Their homes")
    String homes();

    @Message("No home today. Add them on a home’s page of people.")
    String no_homes();

    @Message("Owes")
    String owes();

    @Message("nothing")
    String owes_nothing();

    @Message("of it late: {amount}")
    String late_of(String amount);

    @Message("kept for them: {amount}")
    String credit(String amount);

    @Message("Statement")
    String statement();

    @Message("Take a payment")
    String take_payment();

    @Message("Invoices")
    String invoices();

    @Message("Now and before")
    String now();
}
