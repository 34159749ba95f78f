package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what a plan costs to keep. */
@MessageBundle("cost")
public interface CostWords {
    @Message("Set-up")
    String set_up();

    @Message("Overhead")
    String overhead();

    @Message("what it costs")
    String heading();

    @Message("Which plans lose money")
    String plans_heading();

    @Message("What a year of the plan costs to keep in one home, before tax.")
    String cost_lead();

    @Message("The plan")
    String open_plan();

    @Message("Cost of a year, by cause")
    String by_cause();

    @Message("1 visit a year")
    String one_visit();

    @Message("{count} visits a year")
    String visits(int count);

    @Message("a cost is missing")
    String missing_title();

    @Message("These costs are written down nowhere, so the sum is what is known, and no price follows from it:")
    String missing_lead();

    @Message("What an hour of a technician costs.")
    String missing_hour();

    @Message("How long set-up takes at a visit.")
    String missing_set_up();

    @Message("The trip: the home or the shop has no place on the map, and the price book no cost of a trip.")
    String missing_trip();

    @Message("What the part costs: {part}.")
    String missing_part(String part);

    @Message("Overhead.")
    String missing_overhead();

    @Message("Cause")
    String cause();

    @Message("Minutes")
    String minutes();

    @Message("Work on the promised tasks")
    String tasks();

    @Message("Road, there and back")
    String travel();

    @Message("Parts that the plan gives")
    String parts();

    @Message("Minutes of other work that the plan gives, all of them")
    String ready();

    @Message("At least")
    String at_least();

    @Message("A year costs")
    String a_year();

    @Message("Price of the year for this home")
    String asked_price();

    @Message("Left of the price")
    String left();

    @Message("Left of the price, at most")
    String left_at_most();

    @Message("margin {percent}%")
    String margin_of(String percent);

    @Message("This plan loses money in this home.")
    String loses();

    @Message("One promise finds no place in the visits that are sold; it is not in this cost.")
    String one_unkept();

    @Message("{count} promises find no place in the visits that are sold; they are not in this cost.")
    String unkept(int count);

    @Message("The plan promises repairs without charge; what they cost is not in these figures.")
    String repairs();

    @Message(
            "Minutes of the tasks as the year is laid out; each trip as if the van drove for this home alone; of the parts only those that the plan gives.")
    String how();

    @Message("Choose a home: the cost depends on its machines and on the way there.")
    String choose_home();

    @Message("The price for a margin")
    String price_for();

    @Message("Margin wanted, in percent of the price")
    String margin();

    @Message("A part of the price, not an addition to the cost: 40% of a price of 100.00 leaves 40.00")
    String margin_hint();

    @Message("Reckon the price")
    String reckon();

    @Message("a year, before tax: it leaves {percent}% of itself.")
    String price_leaves(String percent);

    @Message("No price yet")
    String no_price();

    @Message("A price follows when every cost is written down.")
    String no_price_why();

    @Message("How far it may lie")
    String spread();

    @Message("One year in ten costs no more than")
    String low();

    @Message("One year in two")
    String middle();

    @Message("Nine years in ten")
    String high();

    @Message("It rests on 1 closed visit of your own.")
    String rests_on_one();

    @Message("It rests on {visits} closed visits of your own.")
    String rests_on(int visits);

    @Message("That is little: take it as a hint.")
    String little();

    @Message("All visits count where too few of the kind are known:")
    String few();

    @Message(
            "The year is lived 2,000 times: each visit takes as long, gives as many parts and comes again as often as one of your past visits, drawn by lot. The same past gives the same figures.")
    String spread_how();

    @Message("No visit of a plan is closed yet: without a past there is no spread.")
    String no_spread();

    @Message("It follows when every cost is written down.")
    String no_spread_missing();

    @Message("Another home")
    String other_home();

    @Message("For your eyes: a year costs {cost} to keep, {left} is left of the price.")
    String offer_costs(String cost, String left);

    @Message("For your eyes: a year costs at least {cost} to keep; some costs are not written down.")
    String offer_costs_known(String cost);
}
