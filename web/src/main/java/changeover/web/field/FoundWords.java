package changeover.web.field;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages on which found machines are written down. */
@MessageBundle("foundmsg")
public interface FoundWords {

    @Message("Equipment found")
    String heading();

    @Message("Equipment")
    String equipment();

    @Message("No machine is written down here yet.")
    String none();

    @Message("Write down a machine")
    String write();

    @Message("Write down another")
    String another();

    @Message("Written down at this visit")
    String at_this_visit();

    @Message("Take it back")
    String take_back();

    @Message("Which kind is it?")
    String which();

    @Message("Everything is written down")
    String done();

    @Message("With the closed visit the home counts as read, and the year’s visits are laid out for these machines.")
    String what_follows();

    @Message("No machine was written down: the home stays to be read.")
    String stays_unread();

    @Message("What people call it")
    String name();

    @Message("Where it is")
    String location();

    @Message("Make")
    String make();

    @Message("Model")
    String model();

    @Message("Serial number")
    String serial();

    @Message("Installed on")
    String installed_on();

    @Message("What fits it")
    String fits();

    @Message("What its plate says")
    String plate();

    @Message("not known yet")
    String not_known();

    @Message("in {unit}")
    String in_unit(String unit);

    @Message("year-month, or year-month-day")
    String month_or_day();

    @Message("Keep the machine")
    String keep();
}
