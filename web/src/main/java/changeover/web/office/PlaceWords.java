package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages of a home's own facts, its dangers and codes, and of buildings. */
@MessageBundle("place")
public interface PlaceWords {

    @Message("Change the home")
    String edit_home();

    @Message("Year it was built")
    String built_in();

    @Message("Latitude")
    String latitude();

    @Message("Longitude")
    String longitude();

    @Message("Building")
    String building();

    @Message("it stands by itself")
    String no_building();

    @Message("Keep the home")
    String keep();

    @Message("Getting in and hazards")
    String access();

    @Message("Hazards")
    String dangers();

    @Message("No hazard is known.")
    String no_dangers();

    @Message("It is gone")
    String cleared();

    @Message("Add a hazard")
    String add_danger();

    @Message("What is it?")
    String danger_kind();

    @Message("In words")
    String danger_note();

    @Message("Where, and what to do about it")
    String danger_note_hint();

    @Message("Keys and codes")
    String codes();

    @Message("Kept encrypted. Shown only for a reason, which is kept too.")
    String codes_hint();

    @Message("None kept.")
    String no_codes();

    @Message("Forget it")
    String forget();

    @Message("Add a key or a code")
    String add_code();

    @Message("Kind")
    String code_kind();

    @Message("Which door or box")
    String label();

    @Message("What it says")
    String secret();

    @Message("For a key: where it is")
    String key_where();

    @Message("Add")
    String add();

    @Message("Buildings")
    String buildings();

    @Message("No building yet. A triplex with one payer is a building with three homes.")
    String no_buildings();

    @Message("Add a building")
    String add_building();

    @Message("What people call it")
    String building_name();

    @Message("Notes")
    String notes();

    @Message("Keep the building")
    String keep_building();

    @Message("Change the building")
    String edit_building();

    @Message("Homes in it")
    String dwellings();

    @Message("No home is in it yet. Choose the building on the page that changes a home.")
    String no_dwellings();

    @Message("Add a home")
    String add_dwelling();

    @Message("pays")
    String pays();

    @Message("nobody pays yet")
    String no_payer();

    @Message("Machines in common")
    String common();

    @Message("No machine serves the building in common.")
    String no_common();

    @Message("Add a machine")
    String add_machine();

    @Message("When")
    String when();

    @Message("By")
    String by();

    @Message("What")
    String what();

    @Message("Before")
    String before();

    @Message("After")
    String after();

    @Message("Who saw the codes")
    String readings();

    @Message("Nobody.")
    String no_readings();

    @Message("Reason")
    String reason();

    @Message("the program itself")
    String nobody();
}
