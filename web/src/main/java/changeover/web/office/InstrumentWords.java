package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of instruments: by number, with the last day of their calibration and who has them. */
@MessageBundle("instrument")
public interface InstrumentWords {
    @Message("Instruments")
    String heading();

    @Message(
            "What readings are taken with. Today tells thirty days before a calibration is over; a reading taken after it is flagged at the close-out and in the report.")
    String lead();

    @Message("No instrument is written down yet. Add the first one below.")
    String none();

    @Message("no calibration known")
    String never();

    @Message("calibration is over")
    String over();

    @Message("calibration is over soon")
    String soon();

    @Message("in the shop")
    String in_shop();

    @Message("{name} has it")
    String with(String name);

    @Message("Calibrated")
    String calibrated();

    @Message("On")
    String day();

    @Message("Until")
    String until();

    @Message("Who has it")
    String holder();

    @Message("Nobody: the shop")
    String nobody();

    @Message("Hand it over")
    String give();

    @Message("Out of use")
    String end();

    @Message("Add an instrument")
    String add();

    @Message("What it is")
    String name();

    @Message("Serial number")
    String serial();

    @Message("Calibrated until")
    String calibrated_until();

    @Message("Left empty: no calibration is known, and its readings are flagged.")
    String until_hint();

    @Message("Keep")
    String keep();

    @Message("Instruments to calibrate")
    String running_out();

    @Message("See the instruments")
    String see();

    @Message("Change")
    String change();
}
