package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what was changed, column by column. */
@MessageBundle("change")
public interface ChangeWords {

    @Message("the home")
    String home();

    @Message("machine")
    String machine();

    @Message("somebody’s part")
    String part();

    @Message("hazard")
    String danger();

    @Message("key or code")
    String access();

    @Message("taken away")
    String taken_away();

    @Message("name")
    String f_name();

    @Message("street")
    String f_street();

    @Message("city")
    String f_city();

    @Message("province or state")
    String f_region();

    @Message("postal code")
    String f_postal();

    @Message("country")
    String f_country();

    @Message("dwelling")
    String f_unit_label();

    @Message("latitude")
    String f_latitude();

    @Message("longitude")
    String f_longitude();

    @Message("use")
    String f_property_use();

    @Message("year built")
    String f_built_in();

    @Message("getting in")
    String f_getting_in();

    @Message("to be read")
    String f_to_be_read();

    @Message("kind")
    String f_kind();

    @Message("make")
    String f_make();

    @Message("model")
    String f_model();

    @Message("serial")
    String f_serial();

    @Message("where")
    String f_location();

    @Message("installed on")
    String f_installed_on();

    @Message("installed by")
    String f_installed_by();

    @Message("maker’s warranty")
    String f_maker_warranty_until();

    @Message("labour warranty")
    String f_labour_warranty_until();

    @Message("registration")
    String f_registration();

    @Message("what fits it")
    String f_fits();

    @Message("its plate")
    String f_nameplate();

    @Message("taken out")
    String f_ended_on();

    @Message("until")
    String f_until_day();

    @Message("purchase order")
    String f_purchase_order();

    @Message("note")
    String f_note();

    @Message("cleared")
    String f_cleared_on();

    @Message("something else")
    String f_other();
}
