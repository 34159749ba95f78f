package changeover.web.session;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the heat of the night and of what ends a stop. */
@MessageBundle("stopend")
public interface StopEndWords {

    @Message("Heat tonight")
    String heat();

    @Message("Is it the only heat of this home?")
    String only_heat();

    @Message("Does it freeze outside?")
    String freezing();

    @Message("Ask somebody on the spot, or look outside.")
    String freezing_hint();

    @Message("Yes")
    String yes();

    @Message("No")
    String no();

    @Message("What heats the home tonight")
    String tonight();

    @Message("Somebody else’s roof counts too.")
    String tonight_hint();

    @Message("Called at the office")
    String office_who();

    @Message("Called of the customer’s")
    String customer_who();

    @Message("At")
    String at();

    @Message("A later hour than now was yesterday’s.")
    String at_hint();

    @Message("Keep the answer")
    String keep_heat();

    @Message("It is the only heat, and it freezes.")
    String only_and_freezes();

    @Message("It is the only heat; it does not freeze.")
    String only_no_frost();

    @Message("The home has other heat.")
    String other_heat();

    @Message("Tonight: {words}")
    String tonight_is(String words);

    @Message("At the office: {words}")
    String office_is(String words);

    @Message("The customer: {words}")
    String customer_is(String words);

    @Message("{name} said so, {day}")
    String said_by(String name, String day);

    @Message("Something else is true now")
    String answer_again();

    @Message("Back in service")
    String back();

    @Message("Back in service {day}")
    String back_on(String day);

    @Message("Taken out {day}")
    String out_on(String day);

    @Message("Put back by {name}, {ticket} ticket {number}")
    String back_by(String name, String ticket, String number);

    @Message("Put back by {partner}, {ticket} licence {number}; written down by {name}")
    String back_by_partner(String partner, String ticket, String number, String name);

    @Message("A licensed partner put it back")
    String by_partner();

    @Message(
            "Whose licence for it held on that day. It is written with their name, the licence, and yours as who wrote it down.")
    String by_partner_lead();

    @Message("No partner of ours has a licence in that trade.")
    String no_partner();

    @Message("To the partners")
    String to_partners();

    @Message("Partner")
    String partner();

    @Message("On which day")
    String partner_day();

    @Message("Repaired, tested, by which reading, as they say.")
    String partner_done_hint();

    @Message("Write it down")
    String keep_partner();

    @Message("What may it do?")
    String what_end();

    @Message("It is back in service")
    String in_service();

    @Message("It no longer stands there")
    String taken_out();

    @Message("What was done")
    String what_done();

    @Message("Repaired, tested, by which reading. It is written with your name and ticket.")
    String what_done_hint();

    @Message("Put it back in service")
    String end();

    @Message("You hold no {ticket} ticket in force today. You may see and stop; somebody with the ticket puts it back.")
    String no_ticket(String ticket);

    @Message("In force today: {names}.")
    String holders(String names);

    @Message("Nobody here holds one today.")
    String no_holder();
}
