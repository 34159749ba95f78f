package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of debts that are given up. */
@MessageBundle("givenup")
public interface GivenUpWords {

    @Message("Written off")
    String heading();

    @Message("What nobody will pay, with its part of each tax; what came after all is taken back on its own day.")
    String lead();

    @Message("Write off")
    String give_up();

    @Message("Write off {label}")
    String give_up_of(String label);

    @Message("Still open: {open}. Empty writes off all of it.")
    String still_open(String open);

    @Message("Nothing of this invoice is open.")
    String nothing_open();

    @Message("Written off")
    String given_up();

    @Message("Open again")
    String taken_back();

    @Message("Open it again")
    String take_back();

    @Message("Why")
    String why();

    @Message("In your words; the accountant reads them")
    String why_hint();

    @Message("money came after all")
    String because_paid();

    @Message("a credit note was issued")
    String because_credited();

    @Message("Its taxes")
    String taxes();

    @Message("Lost")
    String lost();

    @Message("by {who}")
    String by(String who);

    @Message(
            "Of each tax goes back the part that the debt is of the whole, half-up on all that was written off of the invoice. Ask your accountant when the tax office lets you claim it.")
    String how();

    @Message("Nothing was written off in these days. An open invoice is written off on its own page.")
    String nothing();

    @Message("Amount")
    String amount();

    @Message("All together")
    String sum();
}
