package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of one visit's page. */
@MessageBundle("onevisit")
public interface VisitWords {

    @Message("From your plan")
    String kind_plan();

    @Message("Between")
    String between();

    @Message("{from} and {until}")
    String from_until(String from, String until);

    @Message("Planned time")
    String planned();

    @Message("Agreement")
    String agreement();

    @Message("What is to be done, and why")
    String checklist();

    @Message("Machine")
    String machine();

    @Message("Task")
    String task();

    @Message("Why")
    String why();

    @Message("Any day")
    String due();

    @Message("from {from} to {until}")
    String due_between(String from, String until);

    @Message("It rests on: {grounds}")
    String rests_on(String grounds);

    @Message("Ticket:")
    String ticket();

    @Message("Give it a day")
    String give();

    @Message("Move it")
    String move();

    @Message("Technician")
    String technician();

    @Message("From")
    String starts();

    @Message("Keep the day")
    String keep_day();

    @Message("Take the day off")
    String take_off();

    @Message("{technician}, {day} at {time}")
    String has_day(String technician, String day, String time);

    @Message("Nobody here is a technician yet. Invite one from the shop.")
    String nobody();

    @Message("Invite somebody")
    String invite();

    @Message("This visit will not happen")
    String end();

    @Message("How it ends")
    String end_how();

    @Message("cancelled")
    String end_cancelled();

    @Message("no access: nobody let us in")
    String end_no_access();

    @Message("not kept: we did not come")
    String end_not_kept();

    @Message("The reason stays on the visit.")
    String end_hint();

    @Message("End the visit")
    String end_verb();

    @Message("Closed {day}")
    String stamp_closed(String day);

    @Message("Ended {day}: {why}")
    String ended(String day, String why);

    @Message("Open the report")
    String report();

    @Message("Close it out")
    String close_out();

    @Message("On paper")
    String paper();

    @Message("Type its close-out from paper, in the technician’s name")
    String from_paper();

    @Message("The close-out was typed by {name} in the technician’s name.")
    String typed_by(String name);

    @Message("Reading")
    String reading();

    @Message("Value")
    String value();

    @Message("Taken with")
    String instrument();

    @Message("calibration was over, last day {day}")
    String calibration_over(String day);
}
