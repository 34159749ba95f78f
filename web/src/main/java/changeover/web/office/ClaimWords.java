package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of claims on makers. */
@MessageBundle("claim")
public interface ClaimWords {

    @Message("Claims on makers")
    String heading();

    @Message("A claim stays here until its credit came or was refused.")
    String lead();

    @Message("Waiting for a credit")
    String open();

    @Message("No maker owes an answer. A claim is written from the visit that replaced the part.")
    String none_open();

    @Message("Answered")
    String over();

    @Message("Claim a part")
    String make();

    @Message("Claim a part, {home}")
    String make_for(String home);

    @Message("The visit used no part, so there is nothing to claim.")
    String no_part();

    @Message("Part that was fitted")
    String part();

    @Message("Machine")
    String machine();

    @Message("no one machine")
    String no_machine();

    @Message("Serial number of the old part")
    String old_serial();

    @Message("Serial number of the new part")
    String new_serial();

    @Message("Claimed from")
    String maker();

    @Message("Number of the claim")
    String number();

    @Message("Credit expected")
    String credit();

    @Message("Keep the claim")
    String keep();

    @Message("{part}, claimed from {maker}")
    String of(String part, String maker);

    @Message("Claimed")
    String claimed();

    @Message("Claimed on")
    String claimed_on();

    @Message("Left empty it is today")
    String claimed_hint();

    @Message("Old part went back on")
    String returned();

    @Message("not yet")
    String not_yet();

    @Message("The number and the old part")
    String number_and_return();

    @Message("Keep")
    String keep_number();

    @Message("The maker’s answer")
    String answer();

    @Message("{amount} credited on {day}")
    String credited(String amount, String day);

    @Message("refused on {day}")
    String refused(String day);

    @Message("{credit} expected")
    String expected(String credit);

    @Message("no amount was said")
    String no_credit();

    @Message("claim {number}")
    String claim_number(String number);

    @Message("The next {count}")
    String next(int count);

    @Message("Visit")
    String visit();

    @Message("see the visit")
    String see_visit();
}
