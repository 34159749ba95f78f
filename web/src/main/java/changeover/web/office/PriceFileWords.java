package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what is done with many prices at once: the next version, the file, an example. */
@MessageBundle("pricefile")
public interface PriceFileWords {

    @Message(
            "Every price that a person wrote, as it stands the day before, so many percent more. What was issued keeps its prices.")
    String prepare_lead();

    @Message("Parts, percent more")
    String rise_parts();

    @Message("Labour, percent more")
    String rise_labour();

    @Message("Trips, percent more")
    String rise_travel();

    @Message("Look at it first")
    String look();

    @Message("Nothing changes.")
    String nothing_changes();

    @Message("Until then")
    String before();

    @Message("From then on")
    String after();

    @Message("Difference")
    String difference();

    @Message("takes the place of {price}, written for that day")
    String replaced(String price);

    @Message("1 price follows its cost and is not in this list.")
    String one_by_cost();

    @Message("{count} prices follow their cost and are not in this list.")
    String many_by_cost(int count);

    @Message("Write these prices")
    String write();

    @Message("A CSV file of prices. Nothing is written before you have seen what it changes.")
    String file_lead();

    @Message("Nothing is written yet.")
    String nothing_written();

    @Message("Nothing was written.")
    String wrote_none();

    @Message("Written: 1 price.")
    String wrote_one();

    @Message("Written: {count} prices.")
    String wrote(int count);

    @Message("new")
    String file_new();

    @Message("changed")
    String file_changed();

    @Message("unchanged")
    String file_unchanged();

    @Message("refused")
    String file_refused();

    @Message("Write these prices")
    String file_write();

    @Message("Write the good rows, leave the others out")
    String file_write_good();

    @Message("The file is too large to wait here: choose it once more below, then write it.")
    String choose_again();

    @Message("Row")
    String line();

    @Message("Column")
    String column();

    @Message("Why")
    String reason();

    @Message("What it changes")
    String file_changes();

    @Message("And {count} more that are not shown.")
    String more(int count);

    @Message("Bring a file")
    String bring();

    @Message("The file")
    String the_file();

    @Message(
            "CSV in UTF-8, commas or semicolons, at most 2 MB. Needed are item and price; a part with a cost alone follows its mark-up. Its columns:")
    String file_hint();

    @Message("First day of rows that name none")
    String file_day();

    @Message("Rows with a day of their own keep it.")
    String file_day_hint();

    @Message("Take the book out")
    String take();

    @Message("Every price with its day; brought in again, the file changes nothing.")
    String take_words();

    @Message("Take the price file")
    String take_do();

    @Message("One visit without a plan, before tax, by the same rule that charges every visit.")
    String example_lead();

    @Message("Kind of visit")
    String visit_kind();

    @Message("a call")
    String kind_call();

    @Message("asked for")
    String kind_extra();

    @Message("Minutes on site")
    String minutes();

    @Message("Of these, outside working hours")
    String outside();

    @Message("They count on a call only.")
    String outside_hint();

    @Message("A part")
    String part();

    @Message("none")
    String no_part();

    @Message("How many")
    String quantity();

    @Message("Postal code of the home")
    String postal();

    @Message("On")
    String on_day();

    @Message("And on")
    String and_on();

    @Message("Reckon")
    String reckon();

    @Message("Nothing would be charged.")
    String costs_nothing();

    @Message("Amount")
    String amount();

    @Message("Before tax")
    String before_tax();

    @Message("Something has no price on that day: its line would wait.")
    String waits();
}
