package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of free returns, and of what they are counted by. */
@MessageBundle("comeback")
public interface ReturnVisitWords {

    @Message("Free returns")
    String heading();

    @Message("Go back without charge")
    String make();

    @Message("Go back without charge, {home}")
    String make_for(String home);

    @Message("The visit answers this one, costs nothing, and is counted by its cause.")
    String make_lead();

    @Message("Cause")
    String cause();

    @Message("Part it is about")
    String part();

    @Message("no part")
    String no_part();

    @Message("Machine it is about")
    String machine();

    @Message("no one machine")
    String no_machine();

    @Message("What the household says")
    String words();

    @Message("Minutes planned")
    String minutes();

    @Message("At the latest on")
    String last();

    @Message("Make the visit")
    String keep();

    @Message("answers the visit of {day}")
    String answers(String day);

    @Message("came back on {day}")
    String came_back(String day);

    @Message("to come")
    String to_come();

    @Message("From {first} to {last}.")
    String between(String first, String last);

    @Message("From")
    String from();

    @Message("Until")
    String until();

    @Message("Show")
    String show();

    @Message("By cause")
    String by_cause();

    @Message("By part")
    String by_part();

    @Message("By kind of machine")
    String by_kind();

    @Message("By who kept the first visit, by name")
    String by_technician();

    @Message("Returns")
    String returns();

    @Message("Minutes on site")
    String on_site();

    @Message(
            "{#if returns == 1}One of {visits} visits was a free return.{#else}{returns} of {visits} visits were free returns.{/if}")
    String of_visits(int returns, int visits);

    @Message("No free return was kept in these days. One is made from the closed visit that it answers.")
    String none();
}
