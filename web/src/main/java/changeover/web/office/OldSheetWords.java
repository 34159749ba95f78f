package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages of old spreadsheets. */
@MessageBundle("oldsheet")
public interface OldSheetWords {

    @Message("Old spreadsheet")
    String heading();

    @Message(
            "One line a home, from whatever you kept until now. You say once what its columns are, see three of its rows as they will stand here, and only then is anything written.")
    String words();

    @Message("Bring a spreadsheet")
    String bring();

    @Message("The file")
    String file();

    @Message("Saved as CSV, at most 5 MB, with a line of titles.")
    String file_hint();

    @Message("Read the titles")
    String keep();

    @Message("Files that were brought")
    String files();

    @Message("Brought on")
    String day();

    @Message("written")
    String written();

    @Message("nothing written yet")
    String not_written();

    @Message("taken away")
    String forgotten();

    @Message("Rows")
    String rows();

    @Message(
            "{#if count == 1}One home can be written{#else}{count} homes can be written{/if}, with {units} machines and {agreements} agreements.")
    String fresh(int count, int units, int agreements);

    @Message("No home of this file is left to be written.")
    String nothing_fresh();

    @Message("Rows to be mended: {count}.")
    String mend(int count);

    @Message("Homes that are here already and stay as they are: {count}.")
    String here(int count);

    @Message("Rows that only repeat another: {count}.")
    String twice(int count);

    @Message("Say first what the columns are. Nothing is written yet.")
    String not_named();

    @Message("Write all of them")
    String write_all();

    @Message("Write the good rows")
    String write_good();

    @Message("What the columns are")
    String columns();

    @Message(
            "The last file’s answers are filled in where the titles are the same. A name, a street, a telephone and a note may stand in several columns.")
    String columns_hint();

    @Message("Column")
    String column();

    @Message("It says")
    String says();

    @Message("Row {number}")
    String row(int number);

    @Message("leave out")
    String leave_out();

    @Message("What the file leaves open")
    String open();

    @Message("Days in three numbers, as 04/03/2026")
    String order();

    @Message("Only asked where a day may be two.")
    String order_hint();

    @Message("not said yet")
    String not_said();

    @Message("day first")
    String day_first();

    @Message("month first")
    String month_first();

    @Message("year first")
    String year_first();

    @Message("Province where none is written")
    String region();

    @Message("Language where none is written")
    String language();

    @Message("English")
    String english();

    @Message("French")
    String french();

    @Message("Plan of agreements that name none")
    String plan();

    @Message("none")
    String no_plan();

    @Message("What is not paid of an agreement")
    String rest();

    @Message("was invoiced by the old books")
    String rest_old();

    @Message("is still to be invoiced here")
    String rest_ask();

    @Message("Day of the take-over")
    String take_over();

    @Message("What was due before it is not called late. It stays once agreements were written.")
    String take_over_hint();

    @Message("Words for machines")
    String kind_words();

    @Message("Words for plans")
    String plan_words();

    @Message("Kept for the next file.")
    String words_hint();

    @Message("No plan is written yet. Write one, then come back to this file.")
    String plan_first();

    @Message("read at the first visit")
    String read_first();

    @Message("no agreement")
    String no_agreement();

    @Message("Keep this and look")
    String look();

    @Message("Three rows as they will stand here")
    String as_read();

    @Message("Machines")
    String machines();

    @Message("To be mended")
    String wrongs();

    @Message("What is wrong")
    String reason();

    @Message("the whole row")
    String whole_row();

    @Message("and {count} more")
    String more(int count);

    @Message("Download the rows to be mended")
    String download_bad();

    @Message("Mend them in your spreadsheet and bring that file: what is written already is not written twice.")
    String download_hint();

    @Message("Some days may be read in two ways. Say below what stands first.")
    String twofold();

    @Message("How it was read")
    String remarks();

    @Message("Take the file away")
    String forget();

    @Message("The file holds names and addresses. What was written from it stays.")
    String forget_words();

    @Message("See the homes")
    String to_homes();

    @Message("From an old spreadsheet")
    String from();

    @Message("An agreement that runs already")
    String running();

    @Message(
            "It was sold before you came here and keeps its own first day and price, for twelve months. What was due before the take-over, {day}, is not called late; the rest of its year is planned.")
    String running_words(String day);

    @Message("Price of the year, before taxes")
    String running_price();

    @Message("Paid, before taxes")
    String running_paid();

    @Message("Visits already made")
    String running_done();

    @Message("Last visit")
    String running_last();

    @Message("Left blank where nobody knows.")
    String running_unknown();

    @Message("What was due then is taken as done.")
    String running_last_hint();

    @Message("Take it over")
    String running_do();
}
