package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages of machines. */
@MessageBundle("machine")
public interface MachineWords {

    @Message("Homes")
    String homes();

    @Message("Buildings")
    String buildings();

    @Message("Add a machine")
    String add();

    @Message("Which kind is it?")
    String which();

    @Message("What takes the place of {name}?")
    String which_replacing(String name);

    @Message("The home’s agreement does not hold this machine: nothing is promised for it yet.")
    String left_out();

    @Message("Add to the agreement")
    String take_in();

    @Message(
            "The plan’s tasks are promised for it in what is left of the term. The agreed price stays; the next offer reckons it in.")
    String take_in_hint();

    @Message("What is known of it")
    String known();

    @Message("What people call it")
    String name();

    @Message("Filter slot, hall closet")
    String name_hint();

    @Message("Make")
    String make();

    @Message("Model")
    String model();

    @Message("Serial number")
    String serial();

    @Message("Where it stands")
    String location();

    @Message("Whose it is")
    String owner();

    @Message("whoever signs for the home")
    String owner_signer();

    @Message("Installed on")
    String installed_on();

    @Message("Installed by")
    String installed_by();

    @Message("Maker’s warranty until")
    String maker_warranty();

    @Message("Labour warranty until")
    String labour_warranty();

    @Message("Registration with the maker")
    String registration();

    @Message("What fits it")
    String fits();

    @Message("What its plate says")
    String plate();

    @Message("not known yet")
    String not_known();

    @Message("in {unit}")
    String in_unit(String unit);

    @Message("year-month, or year-month-day")
    String month_or_day();

    @Message("Keep the machine")
    String keep();

    @Message("Change what is known")
    String edit();

    @Message("Take it out of service")
    String take_out();

    @Message("Another takes its place")
    String replace();

    @Message("Taken out {day}. Its history stays.")
    String taken_out(String day);

    @Message("Take {name} out of service?")
    String ask_again(String name);

    @Message("Nothing more is promised for it from that day. What was done stays.")
    String ask_words();

    @Message("Day")
    String day();

    @Message("Yes, take it out")
    String yes_take_out();

    @Message("No, back")
    String no_back();

    @Message("What is done for it, and how often")
    String promises();

    @Message("Task")
    String task();

    @Message("How often")
    String often();

    @Message("Basis")
    String basis();

    @Message("By")
    String who();

    @Message("them")
    String household();

    @Message("us")
    String technician();

    @Message("Its label says otherwise")
    String own_often();

    @Message("A machine’s own label outranks the catalogue.")
    String own_often_hint();

    @Message("Every so many months")
    String every_months();

    @Message("What it rests on")
    String own_basis();

    @Message("label on the machine, page 12 of its manual")
    String own_basis_hint();

    @Message("Keep this interval")
    String keep_often();

    @Message("Back to the catalogue")
    String forget_often();

    @Message("No task of the catalogue is for it.")
    String no_promises();

    @Message("On its tag")
    String first();

    @Message("It took another machine’s place. The price of {plan} stays as it is.")
    String price_stays(String plan);

    @Message(
            "It took another machine’s place. With it {plan} costs {amount} more a year; the agreed price stays to {last}, and the offer for the next term asks the new one.")
    String price_more(String plan, String amount, String last);

    @Message(
            "It took another machine’s place. With it {plan} costs {amount} less a year; the agreed price stays to {last}, and the offer for the next term asks the new one.")
    String price_less(String plan, String amount, String last);
}
