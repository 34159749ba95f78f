package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the business's own papers. */
@MessageBundle("ownpaper")
public interface OwnPaperWords {
    @Message("Papers of the business and tickets of its people")
    String heading();

    @Message(
            "Your licence, your insurance, your people’s tickets: told of in time on Today, and sent to a customer who asks for them.")
    String lead();

    @Message("No paper is kept yet. Add your licence and your insurance below.")
    String none();

    @Message("licence")
    String licence();

    @Message("insurance")
    String insurance();

    @Message("bond")
    String bond();

    @Message("ticket")
    String ticket();

    @Message("other")
    String other();

    @Message("Whose ticket")
    String person();

    @Message("the business’s own paper")
    String nobodys();

    @Message("no last day")
    String no_day();

    @Message("holds no more")
    String over();

    @Message("runs out soon")
    String soon();

    @Message("to {day}")
    String until(String day);

    @Message("Open the file")
    String open();

    @Message("no file")
    String no_file();

    @Message("Send it")
    String send();

    @Message("Put it away")
    String put_away();

    @Message("Add a paper")
    String add();

    @Message("Kind")
    String kind();

    @Message("What it is called")
    String name();

    @Message("Number")
    String number();

    @Message("Last day")
    String expires();

    @Message("Left empty, it has none.")
    String expires_hint();

    @Message("Days before, to be told of it")
    String remind();

    @Message("The file")
    String file();

    @Message("A PDF, at most five million bytes. Customers get it as it is.")
    String file_hint();

    @Message("Keep the paper")
    String keep();

    @Message("Send “{name}”")
    String sending(String name);

    @Message("By mail where the customer has an address, else as a letter to print, with the file.")
    String sending_lead();

    @Message("To whom")
    String to();

    @Message("Find the customer first.")
    String find_first();

    @Message("Sent")
    String sent();

    @Message("Papers that run out")
    String running_out();

    @Message("See the papers")
    String see();
}
