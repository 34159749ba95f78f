package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what is earned, prepaid and open on a day. */
@MessageBundle("earned")
public interface EarnedWords {

    @Message("Earned")
    String heading();

    @Message("At the end of {day}")
    String at_end(String day);

    @Message("Day")
    String day();

    @Message("Show this day")
    String show();

    @Message("Earned, before tax")
    String earned();

    @Message("In the month")
    String month();

    @Message("In the year")
    String year();

    @Message("In all")
    String ever();

    @Message("Plans")
    String plans();

    @Message("Work invoiced by visit")
    String visits();

    @Message("Fees for what came back and for reminders")
    String fees();

    @Message("Together")
    String together();

    @Message("Owed as service")
    String owed_service();

    @Message("Invoiced and not yet earned")
    String prepaid();

    @Message("Of this, terms that are over")
    String over();

    @Message("Earned and not yet invoiced")
    String ahead();

    @Message("{count} agreements")
    String agreements(int count);

    @Message("1 agreement")
    String one_agreement();

    @Message(
            "A plan’s price is split over its visits, parts and readiness by what each would cost alone in the price book. A visit’s share is earned on the day its tasks are done, readiness day by day.")
    String how();

    @Message("Ended agreements: {count}")
    String ended_count(int count);

    @Message("Ended agreements: earned, and given back")
    String ended();

    @Message("Owed in money, tax included")
    String receivable();

    @Message("Kept for customers")
    String credit();

    @Message("All open documents")
    String open();

    @Message("Agreement")
    String agreement();

    @Message("Invoiced")
    String invoiced();

    @Message("given back {amount}")
    String given_back(String amount);

    @Message("ended {day}")
    String ended_on(String day);

    @Message("Owed as service, or to give back")
    String rest();

    @Message("Ahead")
    String ahead_short();

    @Message("split by the price book")
    String by_prices();

    @Message("split with an assumed price")
    String by_assumption();

    @Message(
            "An assumed price: where the price book has none an hour counts as 60.00, a part as a quarter of an hour, readiness for repairs as one hour.")
    String assumed_how();

    @Message("From what")
    String source();

    @Message("no visit laid out: earned day by day")
    String by_days();

    @Message("No agreement stands behind this figure on that day.")
    String none();

    @Message("Nothing was open on that day.")
    String none_open();

    @Message("Owed without a document")
    String beyond();
}
