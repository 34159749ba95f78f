package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of calls: waiting, answered; who is on call and how soon somebody comes. */
@MessageBundle("call")
public interface CallWords {

    @Message("Calls")
    String heading();

    @Message("Take a call")
    String take();

    @Message("Life first, then what was promised first.")
    String lead();

    @Message("Waiting")
    String waiting();

    @Message("Over")
    String over();

    @Message("No call waits for an answer.")
    String none_waiting();

    @Message("No call is over yet.")
    String none_over();

    @Message("The next {count}")
    String next(int count);

    @Message("Call, {home}")
    String call_of(String home);

    @Message("How urgent")
    String urgency();

    @Message("At risk")
    String at_risk();

    @Message("nobody, as they said")
    String nobody_at_risk();

    @Message("Promised by")
    String there_by();

    @Message("late")
    String late();

    @Message("has a plan")
    String planned();

    @Message("Plan")
    String agreement();

    @Message("the agreement in force then")
    String see_agreement();

    @Message("no plan")
    String no_plan();

    @Message("Told of the price")
    String told_cost();

    @Message("nothing")
    String nothing_told();

    @Message("What it becomes")
    String becomes();

    @Message("Answer it")
    String answer();

    @Message("What it became")
    String became();

    @Message("A visit")
    String became_visit();

    @Message("A word of advice")
    String became_advice();

    @Message("Nothing")
    String became_nothing();

    @Message("Why")
    String why();

    @Message("Minutes planned, for a visit")
    String minutes();

    @Message("At the latest on, for a visit")
    String last();

    @Message("Keep what it becomes")
    String keep_outcome();

    @Message("{what}, {day}")
    String answered(String what, String day);

    @Message("Open the visit")
    String see_visit();

    @Message("Open")
    String open();

    @Message("{who}, {day}")
    String visit_on(String who, String day);

    @Message("its visit has no day yet")
    String visit_no_day();

    @Message("One call waits for an answer.")
    String open_one();

    @Message("{count} calls wait for an answer.")
    String open_some(int count);

    @Message("One call is past its promise.")
    String late_one();

    @Message("{count} calls are past their promise.")
    String late_some(int count);

    @Message("See the calls")
    String see_all();

    @Message("Nobody has rung about this home.")
    String none_home();

    @Message("On call")
    String on_call();

    @Message("On call and answer times")
    String on_call_heading();

    @Message("Whose telephone rings outside hours, and how soon a caller is promised somebody.")
    String on_call_lead();

    @Message("Turns")
    String turns();

    @Message("Nobody is on call in the days to come. Name somebody for the first ones.")
    String no_turns();

    @Message("until {day}")
    String until(String day);

    @Message("Take away")
    String take_away();

    @Message("Who")
    String person();

    @Message("From")
    String from();

    @Message("Last day")
    String last_day();

    @Message("Keep the turn")
    String give_turn();

    @Message("Answer times, in hours")
    String answer_times();

    @Message("Counted on the clock from the ring, day and night. A call that is written down keeps its promise.")
    String answer_lead();

    @Message("{what}, with a plan")
    String with_plan(String what);

    @Message("{what}, without")
    String without_plan(String what);

    @Message("Keep the hours")
    String keep_hours();

    @Message("The owner writes these hours.")
    String owner_only();

    @Message("An hour of labour outside working hours has its own price in the price book.")
    String rate();

    @Message("Correct")
    String correct();

    @Message("Correct the call, {home}")
    String correct_of(String home);

    @Message("What stood before stays and is shown, with who wrote it and when.")
    String correct_lead();

    @Message("Why it is corrected")
    String correct_why();

    @Message("Keep the correction")
    String keep_correction();

    @Message("What it said before")
    String before();

    @Message("Corrected {at}, {by}.")
    String corrected(String at, String by);

    @Message("Answer time of the plan")
    String plan_answer();

    @Message(
            "Whoever has {plan} and rings is promised an answer within these hours, or sooner where the urgency asks for less. An agreement keeps what its plan said when its term began.")
    String plan_answer_lead(String plan);

    @Message("Within how many hours")
    String plan_hours();

    @Message("Left empty, your own answer times alone hold.")
    String plan_hours_hint();

    @Message("Nights, weekends and days off count")
    String plan_nights();

    @Message("Not ticked, only the hours count in which somebody of your crew works.")
    String plan_nights_hint();
}
