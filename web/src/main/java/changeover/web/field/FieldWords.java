package changeover.web.field;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the day and of a visit, as the technician reads them. */
@MessageBundle("fieldmsg")
public interface FieldWords {

    @Message("Stops")
    String stops();

    @Message("Today’s stops")
    String stops_today();

    @Message("{#if count == 1}One stop{#else}{count} stops{/if}")
    String stops_of(int count);

    @Message("No stop stands in your day. The office gives visits their day.")
    String no_stop_today();

    @Message("No stop stands in this day.")
    String no_stop();

    @Message("one task")
    String one_task();

    @Message("{count} tasks")
    String tasks(int count);

    @Message("{count} min")
    String minutes(int count);

    @Message("closed")
    String closed();

    @Message("cancelled")
    String cancelled();

    @Message("no access")
    String no_access();

    @Message("not kept")
    String not_kept();

    @Message("To load")
    String to_load();

    @Message("Nothing has to be loaded for this day.")
    String nothing_to_load();

    @Message("ordered for {home}")
    String ordered_for(String home);

    @Message("came to {place}")
    String came_to(String place);

    @Message("in case it is needed")
    String in_case();

    @Message("The day before")
    String day_before();

    @Message("The day after")
    String day_after();

    @Message("{count} min planned")
    String planned(int count);

    @Message("Getting in")
    String getting_in();

    @Message("Nothing is written about it.")
    String no_way_in();

    @Message("Dog.")
    String dog();

    @Message("Ladder.")
    String ladder();

    @Message("Suspected asbestos.")
    String asbestos();

    @Message("Danger.")
    String danger();

    @Message("signs")
    String signs();

    @Message("pays")
    String pays();

    @Message("lives here")
    String lives();

    @Message("lets you in")
    String lets_in();

    @Message("gets the report")
    String gets_report();

    @Message("Key")
    String key();

    @Message("Code")
    String code();

    @Message("Alarm")
    String alarm();

    @Message("The equipment is still to be read: write down what hangs here and what its plates say.")
    String to_be_read();

    @Message("The postal code is not known: ask for it and tell the office.")
    String asks_postal();

    @Message("Show keys and codes")
    String show_codes();

    @Message("It is kept who looked, and when.")
    String codes_kept();

    @Message("Keys and codes are shown on the day of the visit.")
    String codes_on_day();

    @Message("Visit of {day}")
    String codes_reason(String day);

    @Message("Still open from before")
    String open_findings();

    @Message("Tasks")
    String checklist();

    @Message("This visit has no task of yours. Close it with your minutes.")
    String no_task();

    @Message("Done")
    String done();

    @Message("Doesn’t apply")
    String not_applicable();

    @Message("Not today")
    String deferred();

    @Message("I am here")
    String i_am_here();

    @Message("Next: {task}")
    String go_on(String task);

    @Message("Close the visit")
    String to_closing();

    @Message("{count} of {all} tasks answered")
    String answered(int count, int all);

    @Message("Task {number} of {all}")
    String task_of(int number, int all);

    @Message("This task asks for a refrigerant ticket. Without one, say “Not today” and why.")
    String needs_refrigerant();

    @Message("This task asks for a gas ticket. Without one, say “Not today” and why.")
    String needs_gas();

    @Message("This task asks for an electrical ticket. Without one, say “Not today” and why.")
    String needs_electrical();

    @Message("This visit is over. Its sheet is corrected by the office.")
    String closed_sheet();

    @Message("Something is unpaid")
    String unpaid();

    @Message("Serve as planned.")
    String unpaid_serve();

    @Message("Ask the office before you begin.")
    String unpaid_ask();

    @Message("Do not serve before the office says so.")
    String unpaid_not();

    @Message("Danger to life comes first, whatever is owed.")
    String unpaid_life();

    @Message("The customer said yes to {label}")
    String accepted(String label);

    @Message("More than this needs a new yes first: call the office.")
    String not_beyond();

    @Message("Measured with")
    String instrument();

    @Message("nothing named")
    String instrument_none();

    @Message("{name}: calibration over since {day}")
    String instrument_over(String name, String day);

    @Message("{name}: no calibration known")
    String instrument_never(String name);

    @Message("Measured with an instrument that is out of calibration; the report says so:")
    String instruments_over();
}
