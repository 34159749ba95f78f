package changeover.web.field;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of an estimate at the home: written, offered, and answered there where that is allowed. */
@MessageBundle("spot")
public interface FieldEstimateWords {

    @Message("Estimates")
    String heading();

    @Message(
            "What the repair will cost is said before it is made. The customer’s yes is the most that the work may ask.")
    String lead();

    @Message("Write an estimate")
    String write();

    @Message("Another estimate")
    String another();

    @Message("No estimate was written at this visit.")
    String none();

    @Message("Change it")
    String change();

    @Message("Offer it")
    String offer();

    @Message("The customer gets it by mail or letter, with its number and its last day.")
    String offer_means();

    @Message("Read the total to the customer, with what is done for it, before they answer.")
    String read_out();

    @Message("Their answer")
    String answer();

    @Message("The customer says")
    String they_say();

    @Message("Yes, do it")
    String yes();

    @Message("No")
    String no();

    @Message("Who said it")
    String by_name();

    @Message("What they said")
    String said();

    @Message("The work is done in this visit")
    String in_this_visit();

    @Message("Keep their answer")
    String keep();

    @Message("Not signed on the spot here")
    String not_here();

    @Message("The customer says yes on their own page, or in a call with the office.")
    String how_instead();

    @Message("A no may be written down here.")
    String only_no();

    @Message("Write down a no")
    String keep_no();

    @Message("The work goes no further than {amount} before taxes without a new yes.")
    String at_most(String amount);

    @Message("It is done in this visit.")
    String done_here();

    @Message("The office gives it a visit.")
    String done_later();

    @Message("Where a yes may not be signed here, do only what makes the home safe.")
    String safe_first();

    @Message("The office sees to it: call them.")
    String office_adds();

    @Message("With taxes")
    String total();

    @Message("To the visit")
    String to_visit();

    @Message("An estimate that was offered stands as it is. Only the office takes it back.")
    String stands();
}
