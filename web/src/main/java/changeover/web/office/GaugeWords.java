package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of a reading's row in the form of a task. */
@MessageBundle("gauge")
public interface GaugeWords {

    @Message("Readings")
    String readings();

    @Message("Reading {number}")
    String reading(int number);

    @Message("Running state, in English")
    String state_en();

    @Message("Running state, in French")
    String state_fr();

    @Message("What is expected")
    String band();

    @Message("nothing, kept to compare")
    String band_none();

    @Message("between two figures")
    String band_fixed();

    @Message("the good answer")
    String band_answer();

    @Message("the plate’s figure, so many percent")
    String band_tolerance();

    @Message("between figures of the plate")
    String band_range();

    @Message("as it stands")
    String band_kept();

    @Message("From")
    String low();

    @Message("To")
    String high();

    @Message("Good answer")
    String good();

    @Message("yes")
    String yes();

    @Message("no")
    String no();

    @Message("The plate’s figure")
    String plate_low();

    @Message("The plate’s upper figure")
    String plate_high();

    @Message("Percent either way")
    String percent();

    @Message("Never below")
    String limit_low();

    @Message("Never above")
    String limit_high();

    @Message("What to do outside, in English")
    String beyond_en();

    @Message("What to do outside, in French")
    String beyond_fr();
}
