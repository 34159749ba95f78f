package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of who answers for a part: its maker, we, the law. */
@MessageBundle("guarantee")
public interface GuaranteeWords {

    @Message("Warranties and guarantees")
    String heading();

    @Message(
            "Asked before the plan and the price: the maker of the machine or part, then our own word, then the law. A maker gives the part alone; its labour and trip are asked of our word and of the law all the same. The machine’s own warranty stands on its card.")
    String lead();

    @Message("Our own word")
    String ours();

    @Message(
            "How long a part that we fitted, and its labour, cost nothing when it fails. Other work on the same visit is charged, and the trip with it.")
    String ours_lead();

    @Message("Nothing is written, so nothing that we fitted is free again by itself.")
    String no_ours();

    @Message("Makers of parts")
    String parts();

    @Message(
            "How long the maker answers for a part from the day it was fitted. The labour is charged, unless our own word or the law covers it.")
    String parts_lead();

    @Message("Nothing is written about any part.")
    String no_parts();

    @Message("The law")
    String law();

    @Message(
            "What a place’s law gives to machines that we installed from a day on: the part and its labour. The machine’s card must name our business under “Installed by”.")
    String law_lead();

    @Message("Nothing is written, so the law gives nothing here by itself.")
    String no_law();

    @Message("Kind of work")
    String work();

    @Message("work of a plan")
    String maintenance();

    @Message("repairs")
    String repair();

    @Message("From")
    String from();

    @Message("Months")
    String months();

    @Message("Part")
    String part();

    @Message("Where it is written")
    String basis();

    @Message("Place")
    String place();

    @Message("As in CA-QC.")
    String place_hint();

    @Message("Kind of machine")
    String kind();

    @Message("every kind")
    String every_kind();

    @Message("Source")
    String source();

    @Message("The act and its section, or the page, as you read it.")
    String source_hint();

    @Message("Keep")
    String keep();

    @Message("The owner writes these months.")
    String owner_only();
}
