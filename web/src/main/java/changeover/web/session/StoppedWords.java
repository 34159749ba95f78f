package changeover.web.session;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of machines that must not be used. */
@MessageBundle("stopped")
public interface StoppedWords {

    @Message("Do not use")
    String heading();

    @Message("Anybody may see and stop. Only somebody with the ticket for it puts it back in service.")
    String lead();

    @Message("Must not be used today")
    String open();

    @Message("Nothing is stopped. A machine is stopped from its home’s card or at a visit.")
    String none_open();

    @Message("To the homes")
    String to_homes();

    @Message("Has to be done")
    String owed();

    @Message("Nothing is left to do.")
    String none_owed();

    @Message("In service again, or taken out")
    String over();

    @Message("The next {count}")
    String next(int count);

    @Message("since {day}")
    String since(String day);

    @Message("no one machine")
    String no_machine();

    @Message("Nobody has said yet if it is the only heat.")
    String heat_to_ask();

    @Message("{count} still to do")
    String to_do(int count);

    @Message("one thing still to do")
    String one_to_do();

    @Message("Stop a machine")
    String make();

    @Message("Stop a machine, {home}")
    String make_for(String home);

    @Message("Stop it now and ask later: no ticket is needed. The customer is written to at once.")
    String make_lead();

    @Message("Machine")
    String machine();

    @Message("What was seen")
    String seen();

    @Message("Smell, soot, an alarm, a mark of heat. The customer reads this.")
    String seen_hint();

    @Message("What was shut off")
    String shut_off();

    @Message("Only what a household may shut off: its own switch, breaker or valve. Open nothing.")
    String shut_off_hint();

    @Message("Who may put it back")
    String ticket();

    @Message("whoever has the ticket that such a machine asks for")
    String ticket_of_kind();

    @Message("somebody with a gas ticket")
    String ticket_gas();

    @Message("somebody with a refrigerant ticket")
    String ticket_refrigerant();

    @Message("somebody with an electrical ticket")
    String ticket_electrical();

    @Message("Correct it, or add what has to be done")
    String correct();

    @Message("Add something that has to be done")
    String add_duty();

    @Message("What has to be done")
    String duty_words();

    @Message("What it rests on")
    String duty_source();

    @Message("The rule with its section, or who asked for it and when")
    String duty_source_hint();

    @Message("Its last day")
    String duty_due();

    @Message("Who has to do it")
    String duty_whose();

    @Message("Keep it on the list")
    String keep_duty();

    @Message("Another ticket is the right one")
    String other_ticket();

    @Message("It stays stopped. Which ticket was asked for before, who changed that and why are kept.")
    String other_ticket_lead();

    @Message("Why")
    String ticket_why();

    @Message("Ask for this ticket")
    String keep_ticket();

    @Message("changed by {name}, {day}: {why}")
    String ticket_changed(String name, String day, String why);

    @Message("Stop it")
    String stop();

    @Message(
            "Smell of gas, an alarm, or somebody unwell: everybody leaves first, touches no switch, and calls the emergency services from outside.")
    String life_first();

    @Message("Stopped by {name}, {day}")
    String by(String name, String day);

    @Message("Home")
    String home();

    @Message("Visit")
    String visit();

    @Message("see the visit")
    String see_visit();

    @Message("nothing yet")
    String nothing_yet();

    @Message("Written to")
    String written();

    @Message("nobody: the home names no customer")
    String written_to_nobody();

    @Message("sent {day}")
    String sent(String day);

    @Message("not sent yet")
    String not_sent();

    @Message("Due")
    String due();

    @Message("at once")
    String at_once();

    @Message("by {day}")
    String by_day(String day);

    @Message("late, was due {day}")
    String late(String day);

    @Message("What")
    String what();

    @Message("Who")
    String who();

    @Message("whoever stops it")
    String whoever();

    @Message("office")
    String office();

    @Message("Done")
    String done();

    @Message("not done")
    String not_done();

    @Message("done by {name}, {day}")
    String done_by(String name, String day);

    @Message("rests on {source}")
    String rests_on(String source);

    @Message("rests on {source}; not read at its source: ask a licensed person")
    String rests_on_unread(String source);

    @Message("These lists are reminders. Local codes and the licensed trade decide what must be done.")
    String codes_decide();

    @Message("Which was done?")
    String which();

    @Message("Done by")
    String done_who();

    @Message("Day")
    String day();

    @Message("In words")
    String in_words();

    @Message("Who it was, which number, what they said")
    String in_words_hint();

    @Message("Keep")
    String keep();

    @Message("See it")
    String see();

    @Message("Do not use: {names}")
    String not_to_use(String names);

    @Message("What was shut off: {words}")
    String was_shut_off(String words);
}
