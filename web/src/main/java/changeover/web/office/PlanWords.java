package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the plans' pages. */
@MessageBundle("plans")
public interface PlanWords {
    @Message("Plans")
    String heading();

    @Message("What you sell by the year. What is sold keeps the words and the price it was signed with.")
    String lead();

    @Message("No plan yet. Write the first one: so many visits, these tasks, one price.")
    String none();

    @Message("Write a plan")
    String write();

    @Message("being written")
    String being_written();

    @Message("Name")
    String name();

    @Message("Visits a year")
    String visits();

    @Message("Price a year")
    String price();

    @Message("On sale")
    String standing();

    @Message("not on sale yet")
    String draft();

    @Message("on sale since {day}")
    String on_sale_since(String day);

    @Message("on sale from {day}")
    String on_sale_from(String day);

    @Message("withdrawn on {day}")
    String withdrawn(String day);

    @Message("Code")
    String code();

    @Message("Small letters, digits, hyphens")
    String code_hint();

    @Message("Name on the offer, in English")
    String name_en();

    @Message("Name on the offer, in French")
    String name_fr();

    @Message("Before tax")
    String price_hint();

    @Message("Discount on the rest, %")
    String discount();

    @Message("Off work and parts that the plan does not include")
    String discount_hint();

    @Message("Paid in how many instalments")
    String instalments();

    @Message("1 for all at once")
    String instalments_hint();

    @Message("Minutes of further work included")
    String included_minutes();

    @Message("A year, beyond the tasks below")
    String included_minutes_hint();

    @Message("Repairs are promised without charge")
    String covers_repairs();

    @Message("Repairs without charge")
    String covers_title();

    @Message("In Quebec, repairs promised without charge may be an additional warranty, with duties of its "
            + "own. Visits, parts that wear and a discount on repairs are the safer shape. Have the text "
            + "looked over before it is sold.")
    String covers_caution();

    @Message("What is promised")
    String promised();

    @Message("Task")
    String task();

    @Message("How often")
    String often();

    @Message("Who")
    String who();

    @Message("technician, {minutes} min")
    String technician(int minutes);

    @Message("household, {minutes} min")
    String household(int minutes);

    @Message("Parts included")
    String parts();

    @Message("How many a year without charge; blank for none.")
    String parts_lead();

    @Message("Keep")
    String keep();

    @Message("Keep as draft")
    String keep_draft();

    @Message("On sale")
    String sale();

    @Message("What you changed must be kept first.")
    String sale_lead();

    @Message("First day it is offered")
    String sale_day();

    @Message("Put on sale")
    String put_on_sale();

    @Message("First day it is no longer offered")
    String withdraw_day();

    @Message("Withdraw")
    String withdraw();

    @Message("Tried on a home")
    String tried();

    @Message("As it is kept, with nothing known of the past: every interval counts from today.")
    String tried_lead();

    @Message("Keep the plan, then try it on one of your homes.")
    String tried_after();

    @Message("Street, name or telephone")
    String find_home();

    @Message("Find")
    String find();

    @Message("No home is found.")
    String no_home();

    @Message("It keeps its promises, visits: {sold}")
    String keeps(int sold);

    @Message("Not with so few visits: {sold}")
    String keeps_not(int sold);

    @Message("It promises nothing for this home")
    String nothing();

    @Message("None of its tasks is for a machine that stands there.")
    String nothing_lead();

    @Message("Machines")
    String machines();

    @Message("Visits sold")
    String sold();

    @Message("Visits needed")
    String needed();

    @Message("Work on site, a year")
    String minutes();

    @Message("{minutes} min")
    String min(int minutes);

    @Message("What no visit keeps")
    String missing();

    @Message("Between {first} and {last}.")
    String between(String first, String last);

    @Message("Parts it uses, a year")
    String used();

    @Message("Another rhythm")
    String own_often();

    @Message("How often")
    String how_often();

    @Message("As the catalogue says")
    String as_catalogue();

    @Message("As it stands now")
    String as_it_stands();

    @Message("Every so many months")
    String every_months();

    @Message("So many times a year")
    String times_a_year();

    @Message("Number")
    String number();

    @Message("Further machines")
    String further();

    @Message(
            "The plan’s price holds for the first machine of each kind. Write here what each further one costs a year; empty costs nothing more.")
    String further_lead();

    @Message("Kind")
    String kind_of_machine();

    @Message("In the price")
    String within();

    @Message("Each further one")
    String each_further();
}
