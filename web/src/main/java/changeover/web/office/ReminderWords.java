package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Words for reminders: the ladder, what is due, and who is held back. */
@MessageBundle("remind")
public interface ReminderWords {

    @Message("Reminders")
    String heading();

    @Message("To be reminded today")
    String due();

    @Message("Nobody is to be reminded today.")
    String none_due();

    @Message("The ladder has no step yet, so nobody is reminded.")
    String no_ladder();

    @Message("Set the ladder")
    String set_ladder();

    @Message("The ladder")
    String ladder();

    @Message("Send the chosen")
    String send();

    @Message("They go by themselves every day. You may send them now.")
    String by_themselves();

    @Message("Reminders are switched off. You may still send these.")
    String off();

    @Message("{days} days late")
    String late(long days);

    @Message("one day late")
    String late_one();

    @Message("after {days} days")
    String after(int days);

    @Message("after one day")
    String after_one();

    @Message("friendly")
    String friendly();

    @Message("firm")
    String firm();

    @Message("last")
    String last();

    @Message("by mail")
    String by_mail();

    @Message("as a letter")
    String by_letter();

    @Message("Written")
    String sent();

    @Message("No reminder was written yet.")
    String none_sent();

    @Message("waits")
    String waiting();

    @Message("withdrawn: it was paid, credited or held before it left")
    String withdrawn();

    @Message("left {day}")
    String left(String day);

    @Message("Letters for those without mail")
    String letters();

    @Message("How reminders go out")
    String how();

    @Message("never")
    String how_never();

    @Message("from this list, with a yes")
    String how_list();

    @Message("by themselves every day")
    String how_daily();

    @Message("Keep")
    String keep();

    @Message("Steps")
    String steps();

    @Message("Begin with three usual steps: 7, 21 and 45 days")
    String begin_usual();

    @Message("Add a step")
    String add_step();

    @Message("Change")
    String change();

    @Message("Take off")
    String take_off();

    @Message("A step of the ladder")
    String step();

    @Message("Days after the day of payment")
    String days();

    @Message("Tone")
    String tone();

    @Message("Subject in English")
    String subject_en();

    @Message("Subject in French")
    String subject_fr();

    @Message("Letter in English")
    String body_en();

    @Message("Letter in French")
    String body_fr();

    @Message(
            "Filled in by itself: {documents_name}, {total_name}, {days_name}, and how to answer, by mail or on paper: {answer_name}. Greeting and name of your business are added.")
    String filled(String documents_name, String total_name, String days_name, String answer_name);

    @Message("Ask the fee for a reminder where the place allows it")
    String asks_fee();

    @Message("with the place’s fee")
    String with_fee();

    @Message("Not reminded")
    String held();

    @Message("Hold reminders for {name}")
    String hold_for(String name);

    @Message("Hold reminders")
    String hold();

    @Message("What for")
    String hold_what();

    @Message("everything of this customer")
    String everything();

    @Message("Why")
    String hold_kind();

    @Message("they dispute it")
    String dispute();

    @Message("they promised a day")
    String promise();

    @Message("we wait")
    String we_wait();

    @Message("In a few words")
    String why();

    @Message("Until, if there is a day")
    String until();

    @Message("until {day}")
    String until_day(String day);

    @Message("ended {day}")
    String ended(String day);

    @Message("over since {day}")
    String over(String day);

    @Message("Remind again")
    String end();

    @Message("No reminder of this customer is held back.")
    String none_held();
}
