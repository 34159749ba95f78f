package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the business's own seasons and intervals. */
@MessageBundle("own")
public interface OwnRowsWords {

    @Message("Seasons")
    String seasons();

    @Message("Promises name these seasons. Move their days to your own climate, and say what the new days rest on.")
    String seasons_lead();

    @Message("English")
    String english();

    @Message("French")
    String french();

    @Message("First day")
    String first();

    @Message("Last day")
    String last();

    @Message("What the days rest on")
    String basis();

    @Message("as shipped, for a cold climate")
    String as_shipped();

    @Message("shipped as {first} to {last}")
    String shipped_as(String first, String last);

    @Message("Add a season of your own")
    String add_season();

    @Message("Change {name}")
    String change(String name);

    @Message("Short name, small letters")
    String code();

    @Message("Month and day: 04-01")
    String day_hint();

    @Message("What is changed over in it")
    String changeover();

    @Message("nothing")
    String nothing();

    @Message("to heating")
    String heating();

    @Message("to cooling")
    String cooling();

    @Message("Keep")
    String keep();

    @Message("Your own visits, a weather record, an agency")
    String basis_hint();

    @Message("Your own intervals")
    String intervals();

    @Message("They outrank the catalogue: for every machine, or for one whose own label says otherwise.")
    String intervals_lead();

    @Message("No interval of your own yet: the catalogue’s are promised.")
    String none_intervals();

    @Message("Task")
    String task();

    @Message("For")
    String whose();

    @Message("every machine")
    String every_machine();

    @Message("How often")
    String often();

    @Message("It rests on")
    String rests_on();

    @Message("End")
    String end();

    @Message("Add an interval")
    String add_interval();

    @Message("Serial number of one machine")
    String serial();

    @Message("Leave it empty for every machine")
    String serial_hint();

    @Message("every so many months")
    String every_months();

    @Message("so many times a year")
    String times_a_year();

    @Message("once in a season")
    String each_season();

    @Message("How many months, or how many times")
    String number();

    @Message("Which season")
    String season();

    @Message("The label on the machine, a maker’s manual, a law")
    String interval_basis_hint();

    @Message("Where that is published, if it is")
    String source();

    @Message("Tasks and kinds of your own")
    String own_tasks();

    @Message("None of your own: the shipped catalogue is used.")
    String none_own();

    @Message("task")
    String a_task();

    @Message("kind of equipment")
    String a_kind();

    @Message("How seldom a filter may run dirty")
    String chance();

    @Message("Times in a hundred that it may have turned grey before somebody looks")
    String percent();

    @Message("From 1 to 50; 15 if you say nothing. Each home’s own look comes earlier for a smaller number.")
    String percent_hint();
}
