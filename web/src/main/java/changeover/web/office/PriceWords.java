package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the price book and of the rules behind it. */
@MessageBundle("price")
public interface PriceWords {

    @Message("Prepare the next version")
    String prepare();

    @Message("The price file")
    String file();

    @Message("As the book stands on")
    String as_of();

    @Message("Show")
    String show();

    @Message("Back to today")
    String today();

    @Message("Next price")
    String next();

    @Message("Parts without a price")
    String missing();

    @Message("A visit that uses one of these waits for its price before it can be invoiced.")
    String missing_lead();

    @Message("What changes later")
    String coming();

    @Message("Nothing is written for a later day.")
    String nothing_coming();

    @Message("1 price")
    String one_price();

    @Message("{count} prices")
    String so_many(int count);

    @Message("Take back")
    String take_back();

    @Message("For a part with a cost it may stay empty: a mark-up then makes the price.")
    String price_hint();

    @Message("What stands behind the prices")
    String rules();

    @Message("What a visit would cost")
    String example();

    @Message("Mark-ups on cost")
    String mark_ups();

    @Message("How minutes are counted")
    String labour();

    @Message("Zones of travel")
    String zones();

    @Message("What the plan gives comes first; the rest is counted up, and the line says so.")
    String labour_lead();

    @Message("Minutes are counted up to the next quarter hour, without a minimum, until you write something else.")
    String labour_usual();

    @Message("How minutes are counted")
    String how_counted();

    @Message("Count otherwise from a day on")
    String count_so();

    @Message("Minutes are counted up to")
    String step_minutes();

    @Message("Minutes of a visit, at least")
    String minimum();

    @Message("0 for no minimum. It is asked of visits that no plan promised; minutes the plan gives count towards it.")
    String minimum_hint();

    @Message(
            "A part with a cost and no price of its own costs what these rules say, from their day on. A part’s own rule goes first, then its kind’s, then the one for what it costs.")
    String mark_ups_lead();

    @Message("In force today")
    String in_force();

    @Message("No mark-up yet: every part needs a price of its own. Begin with rules by cost.")
    String no_mark_ups();

    @Message("For")
    String whom();

    @Message("Price")
    String rule();

    @Message("By what a part costs")
    String by_cost();

    @Message("All together from one day on; the first begins at nought. Lines left empty are none.")
    String by_cost_hint();

    @Message("From a cost of")
    String cost_from();

    @Message("Percent more")
    String percent();

    @Message("Empty: this rule ends on that day.")
    String percent_hint();

    @Message("Rounded to")
    String step();

    @Message("0.05, 0.25 or 1.00; half of it goes up.")
    String step_hint();

    @Message("For one part or a kind of part")
    String by_name();

    @Message(
            "The longest beginning of a postal code that fits goes first; else the nearest zone that reaches as far as the home; else the ordinary fee. The line says which.")
    String zones_lead();

    @Message("No zone yet: every trip costs the ordinary fee. Add a zone, then its fee in the price book.")
    String no_zones();

    @Message("Zone")
    String zone();

    @Message("Where")
    String where();

    @Message("Fee today")
    String fee();

    @Message("ordinary")
    String ordinary_fee();

    @Message("Nobody has said where the shop stands, so distances say nothing yet.")
    String not_placed();

    @Message("Add or change a zone")
    String add_zone();

    @Message("Code")
    String code();

    @Message("Small letters, digits and hyphens. A known code from a later day changes that zone.")
    String code_hint();

    @Message("English name")
    String name_en();

    @Message("French name")
    String name_fr();

    @Message("Beginnings of postal codes")
    String postals();

    @Message("Parted by commas: X0X, X1A 2")
    String postals_hint();

    @Message("Kilometres from the shop, at most")
    String within_km();

    @Message("As the crow flies")
    String within_km_hint();

    @Message("From that day on there is no such zone")
    String closed();

    @Message("Where the shop stands")
    String shop_place();

    @Message("Latitude")
    String latitude();

    @Message("Longitude")
    String longitude();

    @Message("Degrees; west of Greenwich is below nought")
    String longitude_hint();
}
