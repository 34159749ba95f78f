package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the pages of homes, machines and the people of a home. */
@MessageBundle("homes")
public interface HomesWords {

    @Message("Homes")
    String heading();

    @Message("{#if count == 1}One home is known here.{#else}{count} homes are known here.{/if}")
    String count(long count);

    @Message("{#if count == 1}One home matches “{text}”.{#else}{count} homes match “{text}”.{/if}")
    String found(long count, String text);

    @Message("No home matches “{text}”. Look for a part of the name, the street, the telephone or a serial number.")
    String none_found(String text);

    @Message("No home yet. Add the first one, or bring a whole file.")
    String none();

    @Message("Add a home")
    String add();

    @Message("Bring a file")
    String bring();

    @Message("Look-alikes")
    String alike();

    @Message("Take a file out")
    String take();

    @Message("Next {count}")
    String next(int count);

    @Message("To be read at the first visit")
    String to_be_read();

    @Message("{count} machines")
    String machines(int count);

    @Message("one machine")
    String one_machine();

    @Message("no machine yet")
    String no_machine();

    @Message("Who lives there and signs")
    String who();

    @Message("For a home that somebody else pays for, add the payer on the house card afterwards.")
    String who_hint();

    @Message("Name")
    String name();

    @Message("Telephone")
    String phone();

    @Message("Mail address")
    String email();

    @Message("Language")
    String language();

    @Message("Where it is")
    String where();

    @Message("Street and number")
    String street();

    @Message("Dwelling in the building")
    String unit();

    @Message("City")
    String city();

    @Message("Province or state")
    String region();

    @Message("Two letters: QC, ON")
    String region_hint();

    @Message("Postal code")
    String postal();

    @Message("Country, two letters")
    String country();

    @Message("What the place is used for")
    String use();

    @Message("a dwelling")
    String residential();

    @Message("a business")
    String commercial();

    @Message("How one gets in")
    String getting_in();

    @Message("No codes here: they have their own register on the house card.")
    String getting_in_hint();

    @Message("Machines are read at the first visit")
    String read_first();

    @Message("Keep the home")
    String keep();
}
