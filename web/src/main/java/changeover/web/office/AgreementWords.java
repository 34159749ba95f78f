package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of offers, agreements and renewals. */
@MessageBundle("deal")
public interface AgreementWords {

    @Message("Agreements")
    String heading();

    @Message("No agreement yet. Open a home and offer it a plan.")
    String none();

    @Message("Homes")
    String homes();

    @Message("To renew")
    String renewals();

    @Message("No term ends soon.")
    String none_renewals();

    @Message("Make every offer")
    String offer_all();

    @Message("Make the offer")
    String offer_one();

    @Message("offer by {day}")
    String by(String day);

    @Message("should have gone out by {day}")
    String late_by(String day);

    @Message("offered, waits for an answer")
    String offered_waits();

    @Message("term ends {day}")
    String ends(String day);

    @Message("Waiting for a yes")
    String offered();

    @Message("Accepted, begins later")
    String accepted();

    @Message("In force")
    String in_force();

    @Message("Over, ended or lapsed")
    String over();

    @Message("{price} a year")
    String a_year(String price);

    @Message("Offer a plan")
    String offer_plan();

    @Message("Plan")
    String plan();

    @Message("First day of the term")
    String first_day();

    @Message("No plan is on sale. Write one and put it on sale.")
    String no_plan();

    @Message("Plans")
    String plans();

    @Message("See what it would be")
    String try_it();

    @Message("Offer it")
    String offer_it();

    @Message("It keeps every promise")
    String keeps();

    @Message("It does not keep every promise")
    String keeps_not();

    @Message("{visits} visits, {minutes} minutes a year.")
    String forecast(int visits, int minutes);

    @Message("What no visit keeps")
    String unkept();

    @Message("No longer this year")
    String gone();

    @Message("{season}: first kept from {day}")
    String gone_next(String season, String day);

    @Message("{season}: not in this term")
    String gone_none(String season);

    @Message("Agreement {number}")
    String number(int number);

    @Message("Offer {number}")
    String offer_number(int number);

    @Message("Home")
    String home();

    @Message("Signs")
    String signer();

    @Message("Pays")
    String payer();

    @Message("Term")
    String term();

    @Message("Price")
    String price();

    @Message("in {count} instalments")
    String instalments(int count);

    @Message("Stands until")
    String stands();

    @Message("Visits a year")
    String visits();

    @Message("What is promised")
    String promised();

    @Message("household")
    String household();

    @Message("technician, {minutes} min")
    String technician(int minutes);

    @Message("How often")
    String often();

    @Message("Who")
    String who();

    @Message("Parts included")
    String parts();

    @Message("Accepted {day}")
    String stamp_accepted(String day);

    @Message("by {name}, {how}")
    String accepted_by(String name, String how);

    @Message("Taken over {day}")
    String taken_over(String day);

    @Message("When it was taken over")
    String before();

    @Message("paid {amount}")
    String before_paid(String amount);

    @Message("visits already made: {count}")
    String before_visits(String count);

    @Message("last visit {day}")
    String before_last(String day);

    @Message("nothing is known of payments or visits")
    String before_nothing();

    @Message("Ended {day}: {why}")
    String ended(String day, String why);

    @Message("The customer said yes")
    String accept();

    @Message("Who said yes")
    String by_name();

    @Message("Day")
    String day();

    @Message("How it was said")
    String channel();

    @Message("Paid by credit card")
    String card();

    @Message("Write the agreement")
    String accept_verb();

    @Message("Open the offer as PDF")
    String pdf();

    @Message("End the agreement")
    String end();

    @Message("What was still to come under it falls away. What was done stays, and its invoices too.")
    String end_lead();

    @Message("First day on which it no longer holds")
    String end_day();

    @Message("Reason")
    String cause();

    @Message("Some places ask for it before they say what the customer gets back.")
    String cause_hint();

    @Message("another, or none")
    String no_cause();

    @Message("Why")
    String why();

    @Message("Invoices and drafts")
    String invoices();

    @Message("See the year")
    String year();
}
