package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of the homes file. */
@MessageBundle("file")
public interface FileWords {

    @Message("Homes file")
    String heading();

    @Message("Bring a file")
    String bring();

    @Message("A CSV file of homes with their machines. Nothing is written before you have seen what would be.")
    String bring_words();

    @Message("The file")
    String file();

    @Message("CSV, at most 20 MB. Its columns:")
    String file_hint();

    @Message("Look at it first")
    String look();

    @Message("Would be written: rows {rows}, homes {homes}, customers {customers}, machines {units}.")
    String would(int rows, int homes, int customers, int units);

    @Message("Every row is good. Nothing is written yet.")
    String all_good();

    @Message("To be mended: {count}. Nothing is written yet.")
    String some_bad(int count);

    @Message("Choose the file once more, then say what to do with it.")
    String choose_again();

    @Message("Row")
    String row();

    @Message("Column")
    String column();

    @Message("What is wrong")
    String reason();

    @Message("the whole row")
    String whole_row();

    @Message("and {count} more")
    String more(int count);

    @Message("Bring it in, all or nothing")
    String all_or_nothing();

    @Message("Good rows in, bad rows back")
    String good_in();

    @Message("Written: rows {rows}, homes {homes}, customers {customers}, machines {units}.")
    String written(int rows, int homes, int customers, int units);

    @Message("Nothing was written: a row is wrong.")
    String nothing_written();

    @Message("The bad rows, to be mended and brought again")
    String bad_back();

    @Message("Copy them into a file, mend what is wrong and bring that file.")
    String bad_back_hint();

    @Message("Download the bad rows")
    String download_bad();

    @Message("See the homes")
    String to_homes();

    @Message("Take the file out")
    String take();

    @Message("Every home with its machines, in the same columns. Without keys and codes.")
    String take_words();

    @Message("Download the homes")
    String take_do();

    @Message("With keys and codes")
    String take_codes();

    @Message("Why you take them out")
    String why();

    @Message("Kept with your name and the hour.")
    String why_hint();

    @Message("Download with the codes")
    String take_codes_do();
}
