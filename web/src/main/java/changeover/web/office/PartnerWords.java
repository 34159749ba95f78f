package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of licensed partners and of the visits that they make for us. */
@MessageBundle("partner")
public interface PartnerWords {
    @Message("Partners")
    String heading();

    @Message(
            "Electricians, gas fitters, plumbers: who goes for you where your own people may not. A visit goes to them only while a licence is written down and every paper of theirs holds.")
    String lead();

    @Message("No partner is written down yet. Add the first one below, then their licence.")
    String none();

    @Message("electricity")
    String electrical();

    @Message("gas")
    String gas();

    @Message("plumbing")
    String plumbing();

    @Message("refrigeration")
    String refrigeration();

    @Message("another trade")
    String other();

    @Message("no licence written down")
    String no_licence();

    @Message("a paper holds no more")
    String over();

    @Message("a paper runs out soon")
    String soon();

    @Message("papers hold to {day}")
    String holds(String day);

    @Message("Open")
    String open();

    @Message("Add a partner")
    String add();

    @Message("Name")
    String name();

    @Message("Trade")
    String trade();

    @Message("Telephone")
    String phone();

    @Message("Mail")
    String email();

    @Message("Keep the partner")
    String keep();

    @Message("Papers")
    String papers();

    @Message("No paper is written down. Add their licence first: without it no visit goes to them.")
    String no_paper();

    @Message("licence")
    String licence();

    @Message("insurance")
    String insurance();

    @Message("other paper")
    String other_paper();

    @Message("holds no more")
    String paper_over();

    @Message("runs out soon")
    String paper_soon();

    @Message("Put it away")
    String put_away();

    @Message("Add a paper")
    String add_paper();

    @Message("Kind")
    String kind();

    @Message("Number")
    String number();

    @Message("Last day")
    String expires();

    @Message("Days before, to be told of it")
    String remind();

    @Message("Keep the paper")
    String keep_paper();

    @Message("Visits")
    String visits();

    @Message("No visit has gone to them yet.")
    String no_visit();

    @Message("made")
    String made();

    @Message("to be made")
    String to_be_made();

    @Message("should have been made")
    String late();

    @Message("We work with them no longer")
    String end();

    @Message("Papers of partners that run out")
    String running_out();

    @Message("With partners")
    String out();

    @Message("Partner")
    String partner();

    @Message("{name}, on {day}")
    String with(String name, String day);

    @Message("Made by {name} on {day}")
    String made_by(String name, String day);

    @Message("With {name}, {day}")
    String pencil(String name, String day);

    @Message("Give it to a partner")
    String give();

    @Message(
            "The visit leaves your people’s days; whatever hour somebody had for it is free again. Ring the customer with the partner’s day.")
    String give_lead();

    @Message("No partner is written down yet.")
    String nobody();

    @Message("Day")
    String day();

    @Message("What they ask, before taxes")
    String price();

    @Message("It counts as what the visit costs you.")
    String price_hint();

    @Message("What was agreed")
    String note();

    @Message("Close it as made by {name}")
    String close(String name);

    @Message("From what they told you or wrote. The report to the customer names them.")
    String close_lead();

    @Message("Made on")
    String made_on();

    @Message("Minutes at the home")
    String minutes();

    @Message("Nought where nobody knows.")
    String minutes_hint();

    @Message("Which of these was not done?")
    String not_done();

    @Message("Why not")
    String not_done_why();

    @Message("For the household, on the report")
    String words();

    @Message("Who received the work")
    String received_by();

    @Message("Or why nobody did")
    String nobody_why();

    @Message("Close the visit")
    String close_it();

    @Message("Their report")
    String report();

    @Message("See their report")
    String see_report();

    @Message("A PDF, or a picture of the sheet, at most five million bytes. It stays with the visit.")
    String report_hint();

    @Message("Keep the report")
    String keep_report();

    @Message("Take it back")
    String back();

    @Message("It waits for a day with your own people again.")
    String back_lead();

    @Message("Why")
    String why();

    @Message("See")
    String see();
}
