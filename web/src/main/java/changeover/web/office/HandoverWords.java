package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of a home that changes hands, and of keys that go back. */
@MessageBundle("handover")
public interface HandoverWords {
    @Message("The home changes hands")
    String heading();

    @Message("What happens")
    String kind();

    @Message("It is sold")
    String sold();

    @Message("Somebody else moves in")
    String let();

    @Message("Sold: the new owner signs, pays, lives there, lets us in and reads the report.")
    String sold_means();

    @Message("Somebody moves in: they live there and let us in; who signs and pays stays.")
    String let_means();

    @Message("From")
    String day();

    @Message("Who has it then")
    String who();

    @Message("The agreement, no. {number}, {plan}, to {last}")
    String agreement(int number, String plan, String last);

    @Message("No agreement runs for this home.")
    String no_agreement();

    @Message("goes on with the new owner")
    String follows();

    @Message("What was issued stays with who got it; what is still to be asked is asked of the new owner.")
    String follows_means();

    @Message("ends: the next page asks for the day and the reason")
    String ends();

    @Message("Only for a home that is sold.")
    String agreement_hint();

    @Message("Let it change hands")
    String hand_over();

    @Message("Until now")
    String past();

    @Message("sold to {name}")
    String was_sold(String name);

    @Message("{name} moved in")
    String was_let(String name);

    @Message("Keys and codes in our hands")
    String keys();

    @Message("Give the old owner’s keys back, and ask for the new codes.")
    String keys_hint();

    @Message("None is kept here.")
    String no_keys();

    @Message("Give back")
    String give_back();

    @Message("To whom")
    String to();

    @Message("Day")
    String back_on();

    @Message("Given back")
    String given_back();

    @Message("to {name}")
    String back_to(String name);
}
