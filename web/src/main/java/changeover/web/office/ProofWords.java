package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page that proves what was done in a home. */
@MessageBundle("proof")
public interface ProofWords {

    @Message("Proof of maintenance")
    String heading();

    @Message("For a maker, an insurer, a buyer or a building’s board. No price, key or code stands on it.")
    String lead();

    @Message("In English")
    String english();

    @Message("In French")
    String french();

    @Message("Print")
    String pdf();

    @Message("Machines")
    String machines();

    @Message("What was done")
    String done();

    @Message("Nothing was written down as done yet. Close a visit, and it stands here.")
    String nothing();

    @Message("When")
    String when();

    @Message("What")
    String what();

    @Message("By whom")
    String by();

    @Message("the household")
    String household();
}
