package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the visits and invoices of a home. */
@MessageBundle("trip")
public interface TripWords {

    @Message("closed")
    String closed();

    @Message("Visits to come")
    String coming();

    @Message("Past visits")
    String past();

    @Message("No visit is to come.")
    String no_coming();

    @Message("Nobody has been here yet.")
    String no_past();

    @Message("between {first} and {last}")
    String window(String first, String last);

    @Message("no day yet")
    String no_day();

    @Message("late")
    String late();

    @Message("Visit of the plan")
    String kind_plan();

    @Message("Call")
    String kind_call();

    @Message("Return")
    String kind_return();

    @Message("Extra visit")
    String kind_extra();

    @Message("Visit")
    String kind_other();

    @Message("{count} tasks")
    String tasks(int count);

    @Message("one task")
    String one_task();

    @Message("{count} min")
    String minutes(int count);

    @Message("cancelled")
    String cancelled();

    @Message("no access")
    String no_access();

    @Message("not kept")
    String not_kept();

    @Message("taken out {day}")
    String gone(String day);

    @Message("Invoices of this home")
    String invoices();

    @Message("No invoice yet.")
    String no_invoices();

    @Message("Number")
    String number();

    @Message("Date")
    String date();

    @Message("Customer")
    String customer();

    @Message("Amount")
    String amount();

    @Message("Still open")
    String still_open();

    @Message("draft")
    String draft();

    @Message("paid")
    String paid();

    @Message("credited in full")
    String credited();

    @Message("credit note")
    String credit();

    @Message("Set a visit")
    String set_visit();

    @Message("A visit that no plan promised. Its day and its technician are given next.")
    String set_visit_words();

    @Message("What for")
    String kind();

    @Message("Somebody called")
    String somebody_called();

    @Message("One more visit")
    String one_more();

    @Message("What it is about")
    String note();

    @Message("Not before")
    String first_day();

    @Message("At the latest")
    String no_later();

    @Message("Minutes planned")
    String minutes_planned();

    @Message("Keep the visit")
    String make_visit();
}
