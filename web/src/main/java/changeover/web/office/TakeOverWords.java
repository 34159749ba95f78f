package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages on which a running shop is taken over. */
@MessageBundle("takeover")
public interface TakeOverWords {

    @Message("Taking over a running shop")
    String heading();

    @Message(
            "One day from which you work here. What was due before it is not invoiced, told or called late; the first season is planned from what is known.")
    String words();

    @Message("The day")
    String the_day();

    @Message("Minutes to read one machine")
    String minutes();

    @Message(
            "When nobody knows when a machine was last looked after, the first visit reads it there and takes so much longer.")
    String minutes_hint();

    @Message("Keep")
    String keep();

    @Message("Bring lists")
    String bring();

    @Message("The files")
    String files();

    @Message(
            "CSV files, several at once if you like. Each is known by its line of titles, in English or French; nothing is written before you have seen what they change.")
    String files_hint();

    @Message("Look at them first")
    String look();

    @Message("Which lists")
    String which();

    @Message("List")
    String list();

    @Message("Its titles")
    String titles();

    @Message("Homes with their machines")
    String homes();

    @Message("First numbers")
    String numbers();

    @Message("Agreements that run")
    String agreements();

    @Message("When each task was last done")
    String last_times();

    @Message("What lies on the shelf and in the vans")
    String counts();

    @Message("Owed and prepaid from before")
    String balances();

    @Message("A list of another sort")
    String unknown();

    @Message(
            "Days are written like 2025-10-03. A task without a day is read at the first visit. The lists you take out under “Your lists as files” may be brought back in.")
    String titles_hint();

    @Message("From an old spreadsheet with one line a home")
    String from_sheet();

    @Message("Debts and money from before, by hand")
    String by_hand();

    @Message("Nothing is written yet.")
    String nothing_written();

    @Message("Written.")
    String written();

    @Message("Nothing changes.")
    String nothing_changes();

    @Message("changes")
    String changes();

    @Message("unchanged")
    String unchanged();

    @Message("to mend")
    String bad();

    @Message("Write all of it")
    String write();

    @Message("Write the good rows, leave the others out")
    String write_good();

    @Message("The files are too large to wait here: choose them once more below, then write them.")
    String choose_again();

    @Message("Row")
    String row();

    @Message("What")
    String what();

    @Message("Until now")
    String before();

    @Message("From now on")
    String now();

    @Message("Column")
    String column();

    @Message("Why")
    String reason();

    @Message("And {count} more that are not shown.")
    String more(int count);

    @Message("Still to be read on the machine")
    String unread();

    @Message("Nobody knows when these were last done. The first visit reads it; then write the day.")
    String unread_words();

    @Message("Home")
    String home();

    @Message("Machine")
    String machine();

    @Message("Tasks")
    String tasks();

    @Message("Visited")
    String visited();

    @Message("not yet")
    String not_yet();

    @Message("When things were last done here")
    String times();

    @Message(
            "Write what you know from before {day}. The windows of the year count from it; a visit that has its day already stays where it is.")
    String times_words(String day);

    @Message("How often")
    String often();

    @Message("Last done")
    String last_done();

    @Message("read it at the first visit")
    String to_read();

    @Message("No machine is known here yet.")
    String no_machines();

    @Message("Add a machine")
    String add_machine();

    @Message("Last done: {task}, {machine}")
    String last_of(String task, String machine);
}
