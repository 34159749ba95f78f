package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of parts on order, of their arrival, their second visit and their return. */
@MessageBundle("order")
public interface OrderWords {

    @Message("Parts on order")
    String heading();

    @Message("By the day they are expected, the overdue first.")
    String lead();

    @Message("Waiting")
    String open();

    @Message("No visit waits for a part. Order one from the visit that needs it.")
    String none_open();

    @Message("See the visits")
    String to_visits();

    @Message("Over")
    String over();

    @Message("No order is over yet.")
    String none_over();

    @Message("The next {count}")
    String next_some(int count);

    @Message("Expected")
    String expected();

    @Message("late")
    String late();

    @Message("from {supplier}")
    String from(String supplier);

    @Message("Next: {step}")
    String next(String step);

    @Message("Open")
    String see();

    @Message("{quantity} × {part}")
    String amount(String quantity, String part);

    @Message("waiting for a part")
    String waiting();

    @Message("Order a part")
    String order();

    @Message("Order a part, {home}")
    String order_for(String home);

    @Message("Write down what was ordered from whom; the visit then waits for it.")
    String order_lead();

    @Message("Part")
    String part();

    @Message("not among our parts")
    String not_ours();

    @Message("The maker’s number, where it is not among our parts")
    String number();

    @Message("Its name")
    String name();

    @Message("Quantity")
    String quantity();

    @Message("Ordered from")
    String supplier();

    @Message("Left empty: whom this part is always bought from.")
    String supplier_hint();

    @Message("Ordered on")
    String ordered_on();

    @Message("Left empty it is today")
    String ordered_hint();

    @Message("Expected on")
    String expected_on();

    @Message("For which machine")
    String machine();

    @Message("no one machine")
    String no_machine();

    @Message("Said to the supplier")
    String words();

    @Message("Keep the order")
    String keep_order();

    @Message("Ordered")
    String ordered();

    @Message("{day}, by {who}")
    String ordered_by(String day, String who);

    @Message("The visit that waits")
    String first_visit();

    @Message("see the visit")
    String see_visit();

    @Message("visit of {day}")
    String visit_of(String day);

    @Message("Arrived")
    String arrived();

    @Message("{quantity}, the last on {day}")
    String arrived_on(String quantity, String day);

    @Message("nothing yet")
    String nothing_yet();

    @Message("Still to come")
    String rest();

    @Message("Not coming")
    String not_coming();

    @Message("Customer told")
    String told();

    @Message("not yet")
    String not_told();

    @Message("Second visit")
    String second();

    @Message("none yet")
    String no_second();

    @Message("none: the visit that waits for it uses it")
    String own_second();

    @Message("no day yet")
    String no_day();

    @Message("It came")
    String it_came();

    @Message("How many")
    String how_many();

    @Message("Lies now")
    String place();

    @Message("Keep the arrival")
    String keep_arrival();

    @Message("Another day")
    String another_day();

    @Message("Keep the day")
    String keep_day();

    @Message("Tell the customer")
    String tell();

    @Message("How")
    String how();

    @Message("by telephone")
    String by_call();

    @Message("by message")
    String by_message();

    @Message("in person")
    String by_person();

    @Message("Who was told")
    String who();

    @Message("They were told")
    String keep_told();

    @Message("The visit that uses it")
    String make();

    @Message("Everything else that the same visit waits for goes along.")
    String make_lead();

    @Message("Minutes planned")
    String minutes();

    @Message("At the latest on")
    String last();

    @Message("Left empty: two weeks after everything should be here.")
    String last_hint();

    @Message("Make the visit")
    String make_visit();

    @Message("It will not come")
    String give_up();

    @Message("Why")
    String why();

    @Message("Give up what has not come")
    String keep_end();

    @Message("One part is on order.")
    String open_one();

    @Message("{count} parts are on order.")
    String open_some(int count);

    @Message("One is late.")
    String late_one();

    @Message("{count} are late.")
    String late_some(int count);

    @Message("One is here and has no visit.")
    String here_one();

    @Message("{count} are here and have no visit.")
    String here_some(int count);
}
