package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of closures that somebody looks over, and of correcting them. */
@MessageBundle("review")
public interface ReviewWords {

    @Message("To look over")
    String heading();

    @Message(
            "Their report and their draft leave when somebody has said yes. What must not be used is told at once and never waits here.")
    String lead();

    @Message("Waiting for a yes")
    String waiting();

    @Message("Nothing waits. Rules say which closures do.")
    String none_waiting();

    @Message("Looked over")
    String over();

    @Message("The next {count}")
    String next(int count);

    @Message("1 closed visit waits to be looked over.")
    String one_waits();

    @Message("{count} closed visits wait to be looked over.")
    String some_wait(int count);

    @Message("for somebody to look over its visit")
    String draft_waits();

    @Message("This visit waits to be looked over: neither its report nor its draft leaves before.")
    String visit_waits();

    @Message("{minutes} of {planned} minutes")
    String minutes(int minutes, int planned);

    @Message("closed by {name}")
    String by(String name);

    @Message("every one of {name}")
    String why_technician(String name);

    @Message("what was found")
    String why_severity();

    @Message("one of the first")
    String why_first();

    @Message("somebody learned there")
    String why_beside();

    @Message("Look it over")
    String look();

    @Message("The report as it stands")
    String report();

    @Message("Correct it")
    String correct();

    @Message("Say yes")
    String approve();

    @Message("A word to keep with it")
    String words();

    @Message("Looked over by {name}, {day}")
    String looked(String name, String day);

    @Message("What was said")
    String said();

    @Message("nothing was found")
    String nothing_found();

    @Message("Readings")
    String readings();

    @Message("Findings")
    String findings();

    @Message("Tasks")
    String tasks();

    @Message("Rules for looking over")
    String rules();

    @Message("A closure that falls under one of them waits. What must not be used is told at once all the same.")
    String rules_lead();

    @Message("No closure waits: every report leaves when its visit is closed.")
    String no_rules();

    @Message("Rule")
    String rule();

    @Message("From")
    String from();

    @Message("all of {name}")
    String all_of(String name);

    @Message("{level} or graver")
    String graver(String level);

    @Message("the first {count}")
    String the_first(int count);

    @Message("visits that two went to")
    String beside();

    @Message("everybody")
    String everybody();

    @Message("of {name}")
    String of(String name);

    @Message("ended {day}")
    String ended(String day);

    @Message("End it")
    String end();

    @Message("Add a rule")
    String add();

    @Message("Which closures wait?")
    String which();

    @Message("all of one technician")
    String kind_technician();

    @Message("from a gravity on")
    String kind_severity();

    @Message("the first of somebody new")
    String kind_first();

    @Message("of somebody who learns beside another")
    String kind_beside();

    @Message("Whose")
    String whose();

    @Message("From which gravity on")
    String gravity();

    @Message("How many of the first")
    String how_many();

    @Message("Keep the rule")
    String keep();

    @Message("Only the owner sets rules.")
    String owner_only();

    @Message("Correct the visit")
    String amend();

    @Message("What it said and what it says now are both kept. A report that was sent is followed by the new one.")
    String amend_lead();

    @Message("Why it is corrected")
    String why();

    @Message("Minutes at the home")
    String on_site();

    @Message("Of these, for work beyond the tasks")
    String extra();

    @Message("Received by")
    String received();

    @Message("A word for the household")
    String note();

    @Message("Take it back")
    String take_back();

    @Message("Something was found that is not written down")
    String found_too();

    @Message(
            "What must not be used is stopped and told at once. The corrected visit waits to be looked over where a rule says so.")
    String found_too_lead();

    @Message("Reason")
    String reason();

    @Message("Keep the correction")
    String keep_amendment();

    @Message("Readings and times beside the others’")
    String spread();

    @Message(
            "The middle of what each one measures, and the middle of what all the others do. It is a question to ask and no judgement: homes and machines differ. Names stand by the alphabet.")
    String spread_lead();

    @Message("Minutes at the home, in per cent of the minutes planned")
    String times();

    @Message("Nobody has enough to say anything: five of one’s own and five of the others’.")
    String too_few();

    @Message("too few")
    String few();

    @Message("First day")
    String first_day();

    @Message("Last day")
    String last_day();

    @Message("Show")
    String show();

    @Message("Person")
    String person();

    @Message("How often")
    String how_often();

    @Message("Their middle")
    String own_middle();

    @Message("Middle of the others")
    String others_middle();
}
