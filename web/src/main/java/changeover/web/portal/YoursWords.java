package changeover.web.portal;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the customer's own page. */
@MessageBundle("yours")
public interface YoursWords {

    @Message("Hello {name}. Here is your home’s year.")
    String hello(String name);

    @Message("This page holds your visits, reports and invoices. It opens on this device for 30 days.")
    String open_lead();

    @Message("Open my page")
    String open();

    @Message("Your page")
    String open_title();

    @Message("The link is yours alone. Whoever has it can read this page.")
    String keep_link();

    @Message("No home is in your name today. Call us if that is wrong.")
    String no_homes();

    @Message("Your other homes")
    String others();

    @Message("Next visit")
    String next();

    @Message("day to be set")
    String no_day();

    @Message("Between {first} and {last}. We will tell you the day.")
    String between(String first, String last);

    @Message("From {hour}, {technician}, about {minutes}\u00a0min.")
    String at(String hour, String technician, int minutes);

    @Message("{who} comes on that day.")
    String comes(String who);

    @Message("From {hour}, about {minutes}\u00a0min.")
    String at_hour(String hour, int minutes);

    @Message("No visit is planned now. Call us for one.")
    String no_next();

    @Message("The year")
    String year();

    @Message("{first} to {last}")
    String term(String first, String last);

    @Message(
            "Blue: the turn to cooling. Ochre: the turn to heating. Full ring: visit made. Dashed ring: visit planned.")
    String key();

    @Message("Nothing is promised for this home this year.")
    String no_year();

    @Message("The year as a table")
    String table();

    @Message("Last day")
    String last_day();

    @Message("What")
    String what();

    @Message("How it stands")
    String standing();

    @Message("Yours to do")
    String own();

    @Message("by {day}")
    String by(String day);

    @Message("was due by {day}")
    String overdue(String day);

    @Message("Nothing for you to do now.")
    String no_own();

    @Message("Before you begin")
    String cautions();

    @Message("What we have seen")
    String seen();

    @Message("Seen on {day}.")
    String seen_on(String day);

    @Message("Reports of our visits")
    String reports();

    @Message("Report of {day} (PDF)")
    String report(String day);

    @Message("No visit has been made yet.")
    String no_reports();

    @Message("Invoices")
    String invoices();

    @Message("Day")
    String day();

    @Message("Number")
    String number();

    @Message("Amount")
    String amount();

    @Message("{amount} remains, due on {day}")
    String remains_of(String amount, String day);

    @Message("Late,")
    String late();

    @Message("Paid")
    String paid();

    @Message("Credited in full")
    String credited();

    @Message("Credit note")
    String credit();

    @Message("Left to pay")
    String remains();

    @Message("We keep {amount} for you")
    String kept(String amount);

    @Message("We gave you back {amount} of a payment that did not hold: this amount is owed to us.")
    String owed_beyond(String amount);

    @Message("PDF")
    String pdf();

    // Estimates

    @Message("Estimates")
    String estimates();

    @Message("Estimate {label}")
    String estimate(String label);

    @Message("What")
    String what_for();

    @Message("Total")
    String total();

    @Message("A deposit of {amount} is asked before the work begins.")
    String deposit(String amount);

    @Message("Valid until {day}.")
    String valid_until(String day);

    @Message("Nothing beyond this amount is done before you have said yes to it.")
    String not_beyond();

    @Message("Your answer")
    String your_answer();

    @Message("Yes, do it")
    String yes();

    @Message("No")
    String no();

    @Message("Your name")
    String your_name();

    @Message("A word to us")
    String your_words();

    @Message("Send my answer")
    String send_answer();

    @Message("You have said yes to {whole} before taxes in all.")
    String accepted(String whole);

    @Message("May we go on?")
    String more_heading();

    @Message("You said yes to {accepted} before taxes. With this it would be {whole} before taxes in all.")
    String more_asked(String accepted, String whole);

    @Message("Yes, go on")
    String more_yes();

    @Message("asks you for a yes to more")
    String asks_more();

    @Message("waits for your answer until {day}")
    String waits_until(String day);

    @Message("Stopped {day}.")
    String stopped_on(String day);

    @Message("Do not use it and do not switch it back on until we write to you that it is back in service.")
    String leave_off();

    @Message(
            "If you smell gas, an alarm sounds or somebody feels unwell, everybody leaves first and calls the emergency services from outside.")
    String if_alarm();

    @Message("Local codes and the licensed trade decide what is done next.")
    String codes_decide();
}
