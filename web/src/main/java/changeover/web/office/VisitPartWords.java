package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the parts of a visit: used, and ordered. */
@MessageBundle("visitpart")
public interface VisitPartWords {

    @Message("Parts")
    String parts();

    @Message("Parts used and ordered")
    String used_and_ordered();

    @Message("Used at this visit")
    String used();

    @Message("No part was written down yet.")
    String none_used();

    @Message("Taken from")
    String taken_from();

    @Message("the own van")
    String own_van();

    @Message("Keep what was used")
    String keep_used();

    @Message("This visit waits for")
    String waits_for();

    @Message("A part is missing")
    String missing();

    @Message("from {supplier}, expected {day}")
    String from_expected(String supplier, String day);

    @Message("Serial of the part that came out")
    String old_serial();

    @Message("Serial of the part that went in")
    String new_serial();

    @Message("Where it carries one: the maker’s warranty asks for both")
    String serial_hint();

    @Message("out {serial}")
    String came_out(String serial);

    @Message("in {serial}")
    String went_in(String serial);
}
