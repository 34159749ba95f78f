package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of what a visit asks of whoever is sent. */
@MessageBundle("need")
public interface NeedWords {

    @Message("What it needs")
    String heading();

    @Message(
            "What is written here counts for this visit alone, beside what its tasks ask. An hour written here stands before theirs.")
    String lead();

    @Message("nothing beyond one technician")
    String nothing();

    @Message("two people")
    String two();

    @Message("one person")
    String one();

    @Message("begins at {hour} or later")
    String earliest(String hour);

    @Message("begins at {hour} at the latest")
    String latest(String hour);

    @Message("How many go")
    String people();

    @Message("Ticket")
    String ticket();

    @Message("none beyond its tasks’")
    String no_ticket();

    @Message("Begins not before")
    String not_before();

    @Message("Begins not after")
    String not_after();

    @Message("Why")
    String why();

    @Message("Keep what it needs")
    String keep();

    @Message("Change it")
    String change();

    @Message("Who goes along")
    String second();

    @Message("nobody yet")
    String nobody();

    @Message("with {name}")
    String with(String name);

    @Message("What tasks need")
    String tasks_heading();

    @Message("Two people or an hour of the day, in every home where the task is done. The season’s plan keeps to it.")
    String tasks_lead();

    @Message("No task asks for more than one technician with its ticket, at any hour.")
    String no_tasks();

    @Message("Task")
    String task();

    @Message("Write what a task needs")
    String write();
}
