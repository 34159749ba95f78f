package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what a figure of money is the sum of. */
@MessageBundle("sums")
public interface SumsWords {
    @Message("Money on a day")
    String of_a_day();

    @Message("Parts in stock")
    String stock();

    @Message("On the shelf and in the vans, at cost")
    String stock_at_cost();

    @Message("Every movement up to the day, at the price book’s cost of that day.")
    String stock_how();

    @Message("Part")
    String part();

    @Message("Quantity")
    String quantity();

    @Message("Cost of one")
    String cost_of_one();

    @Message("Value")
    String value();

    @Message("not written down")
    String not_known();

    @Message("1 part has no cost written down and is not in this sum.")
    String one_without();

    @Message("{parts} parts have no cost written down and are not in this sum.")
    String without(int parts);

    @Message("Nothing lay on the shelf or in a van on that day.")
    String none_in_stock();

    @Message("Nothing was kept for a customer on that day.")
    String none_kept();

    @Message("Nothing was earned in these days.")
    String none_earned();

    @Message("From what")
    String from_what();

    @Message("Earned against cost, plan by plan")
    String earned_against_cost();

    @Message("All figures, on any day")
    String another_day();

    @Message("Deposits held for work to come")
    String deposits();

    @Message("Of this, deposits for work to come")
    String of_this_deposits();

    @Message("No deposit was held on that day.")
    String none_held();

    @Message("Taken")
    String taken();

    @Message("Deposit")
    String deposit();

    @Message("Still held")
    String still_held();

    @Message("Debts given up")
    String given_up();

    @Message("Taxes of it")
    String taxes_of_it();

    @Message("Nobody owed anything without a document that day.")
    String none_beyond();
}
