package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Words for the bank's files and what their lines may be. */
@MessageBundle("bank")
public interface BankWords {

    @Message("Bank")
    String heading();

    @Message("Nothing is booked before you say yes.")
    String lead();

    @Message("The oldest {count} are shown; the others follow once these are said.")
    String oldest_first(int count);

    @Message("Files taken in")
    String files();

    @Message("A wrong file goes again, but for the lines of which somebody has said what they are.")
    String files_hint();

    @Message("one line")
    String one_line();

    @Message("{count} lines")
    String lines(int count);

    @Message("one of them is not said yet")
    String one_unsaid();

    @Message("{count} of them are not said yet")
    String unsaid(int count);

    @Message("all of them are said")
    String all_said();

    @Message("Take the file back")
    String take_file_back();

    @Message("Lines that wait")
    String waiting();

    @Message("No line waits. Bring your bank’s file below.")
    String none_waiting();

    @Message("Book the chosen")
    String book();

    @Message("Those that are sure are chosen already.")
    String sure_chosen();

    @Message("Payment")
    String pays();

    @Message("Noted already")
    String noted();

    @Message("{count} payments noted already")
    String noted_together(int count);

    @Message("Came back")
    String returned();

    @Message("Nothing fits. Say yourself what it is.")
    String nothing();

    @Message("the number")
    String why_number();

    @Message("the reference")
    String why_reference();

    @Message("the amount")
    String why_amount();

    @Message("the name")
    String why_name();

    @Message("paid with these words before")
    String why_payer();

    @Message("nothing else fits")
    String why_only_one();

    @Message("more than is open: the rest is kept for them")
    String why_beyond();

    @Message("less than is open")
    String why_less();

    @Message("one way and one day")
    String why_one_day();

    @Message("split by hand")
    String why_split();

    @Message("Otherwise")
    String otherwise();

    @Message("Lines said")
    String said();

    @Message("Nothing was booked from the bank yet.")
    String none_said();

    @Message("no customer’s")
    String dismissed();

    @Message("Take back")
    String take_back();

    @Message("Banks")
    String banks();

    @Message("Bring a file")
    String bring();

    @Message("Name of the bank or the account")
    String name();

    @Message("Add the bank")
    String add();

    @Message("File of {name}")
    String file_of(String name);

    @Message("The bank’s file: OFX, or CSV")
    String file();

    @Message("At most 5 MB. The same lines may come again: each is kept once.")
    String file_hint();

    @Message("Look at it")
    String look();

    @Message("Keep the lines")
    String keep();

    @Message("What the columns are")
    String columns();

    @Message("Only for a CSV file; an OFX file says it by itself. Said once, it is kept for this bank.")
    String columns_hint();

    @Message("Nobody said yet what the columns are; this is a first reading. Correct it, look again, then keep.")
    String guessed();

    @Message("Between the columns")
    String separator();

    @Message("comma")
    String comma();

    @Message("semicolon")
    String semicolon();

    @Message("tab")
    String tab();

    @Message("bar")
    String bar();

    @Message("Rows before the first line")
    String head_rows();

    @Message("Column of the day")
    String day_column();

    @Message("How the day is written")
    String day_style();

    @Message("Column of what came in, or of both with a sign")
    String amount_column();

    @Message("Column of what went out, if it is another")
    String out_column();

    @Message("Cents stand after a comma")
    String decimal_comma();

    @Message("Columns of the words, like 2 or 2, 5")
    String words_columns();

    @Message("Column of the reference, if there is one")
    String reference_column();

    @Message("Column that says how the money came (cheque, transfer …), if there is one")
    String kind_column();

    @Message("As the file stands")
    String as_it_stands();

    @Message("As it is read")
    String as_read();

    @Message("Choose the file once more to keep it.")
    String choose_again();

    @Message("Line of {day}")
    String line_of(String day);

    @Message("Split it over documents")
    String split();

    @Message(
            "Write the documents’ numbers. An empty amount is all that is open of it. What is left is kept for the first one’s customer.")
    String split_hint();

    @Message("Number of the document")
    String number();

    @Message("Book the parts")
    String do_split();

    @Message("It is no customer’s money")
    String dismiss();

    @Message("Why")
    String dismiss_why();

    @Message("Put it aside")
    String do_dismiss();
}
