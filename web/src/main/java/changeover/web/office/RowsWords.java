package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the rows that the rules read: prices, taxes, letters, parts. */
@MessageBundle("rows")
public interface RowsWords {

    @Message("Price book")
    String prices();

    @Message("A price holds from its day until the next one of the same thing. What was issued keeps its own.")
    String prices_lead();

    @Message("No price yet. A part without a price keeps its draft waiting.")
    String none_prices();

    @Message("From")
    String from();

    @Message("What")
    String what();

    @Message("Price")
    String price();

    @Message("What it costs us")
    String cost();

    @Message("Add a price")
    String add_price();

    @Message("Keep")
    String keep();

    @Message("Taxes")
    String taxes();

    @Message("Where we know no tax we refuse to issue. Add the row of your place, with the source you read it in.")
    String taxes_lead();

    @Message("Place")
    String place();

    @Message("Country and region: CA-AB, US-NY")
    String place_hint();

    @Message("Tax")
    String tax();

    @Message("Percent")
    String percent();

    @Message("Source")
    String source();

    @Message("Where you read it: law, agency, page and day")
    String source_hint();

    @Message("Short name, small letters")
    String code();

    @Message("As printed, in English")
    String label_en();

    @Message("As printed, in French")
    String label_fr();

    @Message("Category")
    String category();

    @Message("Registration number to print, if any")
    String registration();

    @Message("First day")
    String first_day();

    @Message("Add the tax")
    String add_tax();

    @Message("your own")
    String own();

    @Message("shipped")
    String shipped();

    @Message("Letters and mail")
    String mail();

    @Message("No mail server is set. Letters wait here until one is; they can be printed.")
    String no_server();

    @Message("Nothing was written yet.")
    String none_mail();

    @Message("Try again now")
    String try_again();

    @Message("Print the letters")
    String print();

    @Message("They are printed")
    String printed_verb();

    @Message("To")
    String to();

    @Message("About")
    String about();

    @Message("Standing")
    String standing();

    @Message("waits for its papers")
    String waits();

    @Message("to be sent")
    String to_send();

    @Message("tries again: {why}")
    String tries(String why);

    @Message("sent")
    String sent();

    @Message("to be printed")
    String to_print();

    @Message("printed")
    String printed();

    @Message("Parts")
    String parts();

    @Message("No part yet. Add those that you carry, receive them on the shelf, then load the vans.")
    String none_parts();

    @Message("Part")
    String part();

    @Message("Code")
    String part_code();

    @Message("Name in English")
    String name_en();

    @Message("Name in French")
    String name_fr();

    @Message("Kind")
    String kind();

    @Message("a part of its own sort")
    String own_kind();

    @Message("Size, as the machine’s card says it")
    String size();

    @Message("Add a part")
    String add_part();

    @Message("Receive or move")
    String move();

    @Message("Quantity")
    String quantity();

    @Message("From where")
    String from_place();

    @Message("To where")
    String to_place();

    @Message("from a supplier")
    String supplier();

    @Message("Keep the movement")
    String keep_move();

    @Message("Correct a count")
    String count();

    @Message("Counted")
    String counted();

    @Message("Why it differs")
    String why();

    @Message("Keep the count")
    String keep_count();

    @Message("Place of the count")
    String count_place();

    @Message("Counted in")
    String unit();

    @Message("in {unit}")
    String counted_in(String unit);
}
