package changeover.web.session;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the form in which a call is taken, the instruction that saves a life first. */
@MessageBundle("ring")
public interface RingWords {

    @Message("Alarm, gas smell, headache or nausea: first say this")
    String life_heading();

    @Message("Everybody leaves the home now. Touch no switch, light nothing, do not look for the cause.")
    String life_leave();

    @Message(
            "From outside, call {number}, or where there is none the local emergency number. For a gas smell, call the gas distributor too.")
    String life_number(String number);

    @Message("From outside, call the emergency number. For a gas smell, call the gas distributor too.")
    String life_no_number();

    @Message("say this now")
    String say_now();

    @Message("Nobody goes back in, and nothing is lit again, until they say so. Then we come.")
    String life_back();

    @Message("Who is at risk")
    String risk();

    @Message("Ask this first. One of the first three: say what stands above before anything else.")
    String risk_hint();

    @Message("I told them to leave and to call the emergency number")
    String told_to_leave();

    @Message("They were told to leave and to call the emergency number.")
    String was_told();

    @Message("What is wrong")
    String wrong();

    @Message("In a word")
    String trouble();

    @Message("Choose")
    String choose();

    @Message("In the caller’s own words")
    String words();

    @Message("Is there heat")
    String heat();

    @Message("yes")
    String heat_yes();

    @Message("no")
    String heat_no();

    @Message("not said")
    String heat_unknown();

    @Message("Who rings")
    String who();

    @Message("Name")
    String caller();

    @Message("Telephone")
    String phone();

    @Message("Day")
    String day();

    @Message("Hour")
    String time();

    @Message("Which home")
    String where();

    @Message("Find the home")
    String find();

    @Message("By name, telephone or street. Left empty, the telephone above is looked for, then the name.")
    String find_hint();

    @Message("Name, telephone or street")
    String find_words();

    @Message("No such home is here. Write the new one below.")
    String none_found();

    @Message("A home that is not here yet")
    String new_home();

    @Message("Its customer is who rings; its machines are read at the first visit.")
    String new_hint();

    @Message("Street")
    String street();

    @Message("City")
    String city();

    @Message("Postal code")
    String postal();

    @Message("Language")
    String language();

    @Message("What they were promised")
    String promised();

    @Message("There by")
    String promise_day();

    @Message("At the latest at")
    String promise_time();

    @Message("Left empty, your answer time holds.")
    String promise_hint();

    @Message("What it was said to cost")
    String cost();

    @Message("How it was said")
    String told_words();

    @Message("The trip and the first hour, parts beside.")
    String told_hint();

    @Message("Keep the call")
    String keep();

    @Message("On call today: {who}")
    String on_call_today(String who);

    @Message("Nobody is on call today.")
    String nobody_on_call();

    @Message("Name somebody")
    String name_somebody();

    @Message("What happens now")
    String now();

    @Message("I go there")
    String now_go();

    @Message("What I said was enough")
    String now_advice();

    @Message("The office answers it")
    String now_office();

    @Message("Why, or what you advised")
    String now_why();

    @Message("Left empty only where the office answers it.")
    String now_why_hint();

    @Message("There at")
    String now_starts();
}
