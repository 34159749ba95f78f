package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the forms for a business's own kinds and tasks. */
@MessageBundle("trade")
public interface TradeWords {

    @Message("Kinds and tasks of your own")
    String heading();

    @Message("Beside the shipped catalogue; one with a shipped code takes its place.")
    String lead();

    @Message("Kinds of equipment")
    String kinds();

    @Message("Tasks")
    String tasks();

    @Message("No kind of your own yet.")
    String none_kinds();

    @Message("No task of your own yet.")
    String none_tasks();

    @Message("Add a kind")
    String add_kind();

    @Message("Add a task")
    String add_task();

    @Message("Short name, small letters")
    String code();

    @Message("Like pool-heater. It stays for good.")
    String code_hint();

    @Message("In English")
    String wording_en();

    @Message("In French")
    String wording_fr();

    @Message("What fits it")
    String fits();

    @Message("What its nameplate says")
    String plate();

    @Message("Leave a row empty to leave it out.")
    String facts_hint();

    @Message("Short name")
    String fact_name();

    @Message("How it is written")
    String form();

    @Message("text")
    String form_text();

    @Message("number")
    String form_number();

    @Message("choice")
    String form_choice();

    @Message("day")
    String form_date();

    @Message("yes or no")
    String form_yes_no();

    @Message("Unit")
    String unit();

    @Message("none")
    String none();

    @Message("Values to choose from")
    String choices();

    @Message("One a line: value = English = French")
    String choices_hint();

    @Message("The part that it picks")
    String part();

    @Message("Keep")
    String keep();

    @Message("Withdraw")
    String withdraw();

    @Message("Offer it again")
    String bring_back();

    @Message("withdrawn {day}")
    String withdrawn(String day);

    @Message("No new machine can be of it; those that are stay so.")
    String withdraw_kind();

    @Message("No new promise names it; what was promised stays.")
    String withdraw_task();

    @Message("On which kinds it is done")
    String for_kinds();

    @Message("Who does it")
    String who();

    @Message("a technician")
    String technician();

    @Message("the household")
    String household();

    @Message("Ticket")
    String ticket();

    @Message("none")
    String no_ticket();

    @Message("Minutes")
    String minutes();

    @Message("How often")
    String how_often();

    @Message("Way")
    String how();

    @Message("every so many months")
    String every_months();

    @Message("before a season")
    String before_season();

    @Message("once in each season")
    String each_season();

    @Message("so many times a year")
    String times_a_year();

    @Message("checked, and replaced at the latest")
    String check_then_replace();

    @Message("only on request")
    String on_request();

    @Message("Months")
    String months();

    @Message("At the least")
    String min();

    @Message("At the most")
    String max();

    @Message("Which seasons")
    String seasons();

    @Message("Months before it")
    String lead_months();

    @Message("and days")
    String lead_days();

    @Message("Times a year")
    String times();

    @Message("Checked every so many months")
    String check();

    @Message("Replaced after so many months")
    String cap();

    @Message("Parts used")
    String parts();

    @Message("Part")
    String part_kind();

    @Message("How many")
    String quantity();

    @Message("each time")
    String each_time();

    @Message("What else")
    String more();

    @Message("Caution")
    String caution();

    @Message("Outdoor temperature that it needs, °C")
    String outdoor();

    @Message("What it rests on")
    String basis();

    @Message("Leave empty for common practice")
    String basis_hint();

    @Message("Where that is published")
    String source();
}
