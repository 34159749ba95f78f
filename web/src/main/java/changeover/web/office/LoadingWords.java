package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages that load the vans and say what to buy. */
@MessageBundle("loading")
public interface LoadingWords {

    @Message("Load the vans")
    String heading();

    @Message(
            "For the visits of {first} to {last}. What is taken along in case counts as often as the one visit that may need most of it.")
    String lead(String first, String last);

    @Message(
            "For the visits of {day}. What is taken along in case counts as often as the one visit that may need most of it.")
    String lead_one(String day);

    @Message("First day")
    String from();

    @Message("Days")
    String days();

    @Message("Show")
    String show();

    @Message("Part")
    String part();

    @Message("For visits")
    String needed();

    @Message("To keep")
    String least();

    @Message("In the van")
    String held();

    @Message("Load")
    String load();

    @Message("Lacking")
    String lacking();

    @Message("Written down as loaded")
    String done();

    @Message("Nothing to load: the van holds what these days need.")
    String nothing();

    @Message("No van has a visit or a minimum. Give visits their days, or set what a van should always hold.")
    String no_van();

    @Message("May be needed and is not among the business’s parts, so it cannot be loaded from here:")
    String not_carried();

    @Message("To buy")
    String to_buy();

    @Message("Nothing to buy.")
    String nothing_to_buy();

    @Message("From")
    String supplier();

    @Message("no supplier written down")
    String no_supplier();

    @Message("For the vans")
    String for_vans();

    @Message("For the shelf")
    String for_shelf();

    @Message("Quantity")
    String quantity();

    @Message("Suppliers and minimums")
    String supply();

    @Message("The buying list goes by supplier. A minimum is what a place should hold when the visits are done.")
    String supply_lead();

    @Message("Minimums")
    String minimums();

    @Message("Bought from")
    String bought_from();

    @Message("Leave it empty to forget the supplier.")
    String forget_supplier();

    @Message("Place")
    String place();

    @Message("Always hold")
    String always();

    @Message("0 for no minimum")
    String no_minimum();

    @Message("Keep")
    String keep();

    @Message("No part yet.")
    String no_part();
}
