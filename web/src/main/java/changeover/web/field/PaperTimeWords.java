package changeover.web.field;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the hours that are typed from a sheet of paper. */
@MessageBundle("frompaper")
public interface PaperTimeWords {

    @Message("From paper: when they came and left on {day}. The visit then keeps that day and those minutes.")
    String times(String day);

    @Message("They came at")
    String arrived();

    @Message("They left at")
    String left();
}
