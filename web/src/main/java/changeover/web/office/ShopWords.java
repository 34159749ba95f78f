package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the shop's own pages. */
@MessageBundle("shop")
public interface ShopWords {

    @Message("The shop")
    String heading();

    @Message("What stands on your paper, who works here, and the rows that the rules read.")
    String lead();

    @Message("On your paper")
    String paper();

    @Message("Eight words under the name")
    String tagline();

    @Message("Street")
    String street();

    @Message("City")
    String city();

    @Message("Province or state")
    String region();

    @Message("Postal code")
    String postal();

    @Message("Country, two letters")
    String country();

    @Message("Telephone")
    String phone();

    @Message("Mail address")
    String email();

    @Message("Licence number")
    String licence();

    @Message("As it must stand on estimates, contracts and invoices")
    String licence_hint();

    @Message(
            "In Quebec a contractor’s licence number stands on estimates, contracts and invoices (Building Act, s. 57.1). None is written down here, so none is printed.")
    String licence_due();

    @Message("GST/HST number")
    String gst();

    @Message("Nine digits, RT, four digits")
    String gst_hint();

    @Message("QST number")
    String qst();

    @Message("Ten digits, TQ, four digits")
    String qst_hint();

    @Message("Small supplier: no tax is charged and no number is printed")
    String small_supplier();

    @Message("Days a customer has to pay")
    String terms();

    @Message("Minutes of a visit, at most")
    String visit_minutes();

    @Message(
            "30 to 600; empty for as long as its work. A longer task has a visit of its own. It counts from the next year that is laid; visits that stand stay.")
    String visit_minutes_hint();

    @Message("A season that is open on a plan’s first day is still given in that term")
    String carry();

    @Message("Paper or night")
    String theme();

    @Message("as the device says")
    String theme_system();

    @Message("always by day")
    String theme_day();

    @Message("always by night")
    String theme_night();

    @Message("Keep")
    String keep();

    @Message("People")
    String people();

    @Message("Name")
    String name();

    @Message("Role")
    String role();

    @Message("owner")
    String owner();

    @Message("office")
    String office();

    @Message("technician")
    String technician();

    @Message("accountant")
    String accountant();

    @Message("An accountant reads the money, the documents and the exports, and writes nothing.")
    String accountant_means();

    @Message("Language")
    String language();

    @Message("refrigerant")
    String refrigerant();

    @Message("gas")
    String gas();

    @Message("house wiring")
    String electrical();

    @Message("last day {day}")
    String last_day(String day);

    @Message("Invite somebody")
    String invite();

    @Message("They sign in with this mail address.")
    String invite_hint();

    @Message("Invite")
    String invite_verb();

    @Message("Add a ticket")
    String add_ticket();

    @Message("Kind of ticket")
    String ticket_kind();

    @Message("Number on the card")
    String ticket_number();

    @Message("Last day it holds")
    String ticket_expires();

    @Message("Give a new password")
    String new_password();

    @Message("End their work here")
    String end();

    @Message("Their last day")
    String end_day();

    @Message("{name} may sign in")
    String may_sign_in(String name);

    @Message("This password serves once. It is shown only now, and kept nowhere: read it to them or write it down.")
    String password_lead();

    @Message(
            "They have a sign-in of their own already. When they sign in next, they are asked whether they work here; until they say yes, nothing here is open to them.")
    String known_already();

    @Message("{name} was asked")
    String was_asked(String name);

    @Message("waiting for their yes")
    String waiting_for_yes();

    @Message("said no on {day}")
    String said_no(String day);

    @Message("Back to the shop")
    String back();

    @Message("Other rows of the shop")
    String rows();

    @Message("Prices")
    String prices();

    @Message("Taxes")
    String taxes();

    @Message("Numbers of documents")
    String numbers();

    @Message("A number is given when a document is issued, without a gap, and never twice.")
    String numbers_lead();

    @Message("Documents")
    String numbers_of();

    @Message("Invoices")
    String numbers_invoices();

    @Message("Credit notes")
    String numbers_credits();

    @Message("How they are written")
    String numbers_way();

    @Message("The next one")
    String numbers_next();

    @Message("the bare number")
    String numbers_bare();

    @Message("What stands before the number is the series; a series that names the year begins anew with it.")
    String numbers_how();

    @Message("the calendar year")
    String numbers_year();

    @Message("the fiscal year that begins in April, written 2026-27; put the number of its first month")
    String numbers_fiscal();

    @Message("the number, with four digits at least")
    String numbers_number();

    @Message("Write them another way")
    String numbers_choose();

    @Message("First number of the series")
    String numbers_first();

    @Message("Only while the series has no number; empty is 1")
    String numbers_first_hint();

    @Message("Letters and mail")
    String mail();
}
