package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Words for what the crew does where something is unpaid, and for what is collected from accounts. */
@MessageBundle("serving")
public interface ServingWords {

    @Message("Where something is unpaid")
    String heading();

    @Message("The crew sees the word on the stop, never the amount. Danger to life comes first, whatever is owed.")
    String lead();

    @Message("Ask the office first")
    String ask();

    @Message("Do not serve")
    String not();

    @Message("Serve")
    String serve();

    @Message("By the rules")
    String by_rule();

    @Message("From how many days late; empty is never")
    String days();

    @Message("And from how much late in all")
    String least();

    @Message("Keep")
    String keep();

    @Message("What holds for {name}")
    String of(String name);

    @Message("What the crew does")
    String what();

    @Message("Why")
    String why();

    @Message("Said so far")
    String said();

    @Message("Nothing was said of this customer: the rules hold.")
    String none_said();

    @Message("Collect from accounts")
    String collect();

    @Message(
            "Who agreed to it, how much, and for which document, less what is kept for them and without what is held back. Collect it at your bank, then say so here.")
    String collect_lead();

    @Message("Due by")
    String until();

    @Message("Show")
    String show();

    @Message("Nothing is due by that day from anybody who agreed to it.")
    String none_due();

    @Message("instalment {number} of {of}")
    String instalment(int number, int of);

    @Message("came back before")
    String came_back();

    @Message("Collected on")
    String collected_on();

    @Message("Mark the chosen as collected")
    String mark();

    @Message("Together")
    String together();

    @Message("Collected lately")
    String lately();

    @Message("Nothing was collected lately.")
    String none_lately();

    @Message("These are the latest 200; older ones stand on their customer’s page.")
    String more_lately();

    @Message("Collecting from the account")
    String mandate();

    @Message("Collecting from the account of {name}")
    String mandate_of(String name);

    @Message("Signed {day}: {reference}")
    String mandate_stands(String day, String reference);

    @Message("This customer has not agreed to it.")
    String no_mandate();

    @Message("Signed on")
    String signed_on();

    @Message("Number of the paper, end of the account")
    String reference();

    @Message("Never the whole account number.")
    String reference_hint();

    @Message("They no longer agree")
    String end_mandate();

    @Message("As a table")
    String csv();
}
