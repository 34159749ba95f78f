package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of a filter slot's own rhythm. */
@MessageBundle("rhythm")
public interface RhythmWords {

    @Message("How long filters last here")
    String heading();

    @Message("The household’s list follows")
    String follows();

    @Message("what was learned here: {often}")
    String follows_learned(String often);

    @Message("what a person decided: {often}")
    String follows_word(String often);

    @Message("what was sold: {often}. Two filters of this home seen grey, and it follows its own rhythm.")
    String follows_sold(String often);

    @Message("Decided by")
    String decided_by();

    @Message("Why")
    String why();

    @Message("The chance that it is grey")
    String chance();

    @Message(
            "Across: weeks since it was put in. The hatch holds eight likely lives of ten. Below: a ring was still clean, a dot was grey, a line lies between two looks.")
    String key();

    @Message("After")
    String after();

    @Message("Chance")
    String of_grey();

    @Message("Eight of ten lie in")
    String between();

    @Message("What was seen")
    String seen();

    @Message(
            "Nothing was told of this filter yet. Write what the household says when it rings, or let the technician note it at a visit.")
    String none();

    @Message("Day")
    String day();

    @Message("What")
    String what();

    @Message("Who")
    String who();

    @Message("Take back")
    String take_back();

    @Message("Write what was told")
    String tell();

    @Message("How it looked")
    String found();

    @Message("For a filter")
    String of_a_filter();

    @Message("nobody said")
    String not_said();

    @Message("still clean")
    String clean();

    @Message("grey")
    String grey();

    @Message("A new one was put in")
    String changed();

    @Message("Who told it")
    String by();

    @Message("On which day")
    String which_day();

    @Message("Write it down")
    String keep();

    @Message("Decide otherwise")
    String decide();

    @Message("The household’s list follows your word until you end it.")
    String decide_hint();

    @Message("Look after, in weeks")
    String look_weeks();

    @Message("Change after, in weeks")
    String change_weeks();

    @Message("Two dogs, a renovation, somebody with asthma")
    String why_hint();

    @Message("Follow my word")
    String follow();

    @Message("End this word")
    String end_word();
}
