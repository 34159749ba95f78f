package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Words for another plan in mid-term. */
@MessageBundle("other")
public interface PlanChangeWords {

    @Message("Change the plan of no. {number}")
    String heading(int number);

    @Message("Change the plan")
    String change();

    @Message("{plan}, {term}. The present agreement holds until the customer says yes to the other plan.")
    String lead(String plan, String term);

    @Message("No other plan is on sale.")
    String none();

    @Message("The present plan, {plan}, on that day")
    String old(String plan);

    @Message("Earned and kept")
    String kept();

    @Message("To give back, before tax")
    String back();

    @Message("To give back, with tax")
    String back_with_tax();

    @Message("Still to bill")
    String to_bill();

    @Message(
            "With the yes the present agreement ends on that day; the credit notes are then written from its page, and what they set free pays the new plan.")
    String then();

    @Message("Nothing was asked for the present agreement yet; with the yes it ends on that day.")
    String nothing_asked();

    @Message("It takes the place of")
    String takes_place();

    @Message("It took the place of")
    String took_place();

    @Message("Settle it")
    String settle();

    @Message("A change is offered:")
    String offered();

    @Message("In its place:")
    String in_its_place();
}
