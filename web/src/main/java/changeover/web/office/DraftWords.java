package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages on which a draft is changed and discarded. */
@MessageBundle("draft")
public interface DraftWords {

    @Message("Change the draft")
    String change();

    @Message("Discard the draft")
    String discard();

    @Message(
            "Write in the language of the document: {language}. What you write stays as you wrote it, also when the visit is amended.")
    String lead(String language);

    @Message("English")
    String english();

    @Message("French")
    String french();

    @Message("What stands on the line")
    String words();

    @Message("The same words in French")
    String in_french();

    @Message("The document is French first; left empty, it says the line as written above.")
    String in_french_hint();

    @Message("Quantity")
    String quantity();

    @Message("Quantity, in {unit}")
    String quantity_in(String unit);

    @Message("Price of one, before tax")
    String price();

    @Message("Now: {quantity}")
    String now_quantity(String quantity);

    @Message("The price book has none yet; left empty, it is taken from there later.")
    String no_price();

    @Message("The plan includes this line: it has no price.")
    String included();

    @Message("Take this line off")
    String off();

    @Message("written by hand")
    String by_hand();

    @Message("the visit now says otherwise")
    String overtaken();

    @Message(
            "The visit was amended after this draft was changed by hand. What a person wrote was left alone: compare it with the visit.")
    String visit_changed();

    @Message("Taken off by hand")
    String taken_off();

    @Message("A line of your own")
    String own_line();

    @Message("Unit")
    String unit();

    @Message("each")
    String one();

    @Message("Kind of work")
    String work();

    @Message("It decides the taxes, with the place.")
    String work_hint();

    @Message("How the price was agreed")
    String agreed();

    @Message("Some places tax one sum for everything otherwise than parts and labour apart.")
    String agreed_hint();

    @Message("upkeep")
    String maintenance();

    @Message("repair")
    String repair();

    @Message("installation")
    String installation();

    @Message("Terms")
    String terms();

    @Message("Days until it is to be paid")
    String due_days();

    @Message("May be issued from")
    String issue_from();

    @Message("You typed this for lines that are no longer on the draft")
    String lost();

    @Message("Keep the draft")
    String keep();

    @Message("Why it is not asked for")
    String why();

    @Message("Kept with your name and the day. A discarded draft can be read, but never comes back.")
    String why_hint();

    @Message("An instalment that is discarded is not written again. Money that was paid ahead stays the customer’s.")
    String plan_lead();

    @Message("If the visit is amended later, it is charged anew by a draft of its own.")
    String visit_lead();

    @Message("Discarded")
    String discarded();

    @Message("{day}, {name}: {why}")
    String discarded_by(String day, String name, String why);
}
