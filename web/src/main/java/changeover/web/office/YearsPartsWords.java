package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the page of the year's need of parts. */
@MessageBundle("supply")
public interface YearsPartsWords {

    @Message("What the year will need")
    String heading();

    @Message(
            "For the homes under a plan today, from {first} to {last}, if each keeps its plan. Filters as each household fills them; what a task takes only when it is needed, as often as your visits took it. Eight years of ten lie between the two figures.")
    String lead(String first, String last);

    @Message("Take it out as a file")
    String file();

    @Message("No home under a plan uses up a part. Sell a plan, and its year’s need stands here.")
    String none();

    @Message("Part")
    String part();

    @Message("Bought from")
    String supplier();

    @Message("nobody noted")
    String no_supplier();

    @Message("{#if homes == 1}one home{#else}{homes} homes{/if}")
    String homes(int homes);

    @Message("not among your parts yet")
    String not_carried();

    @Message("A year’s need")
    String year();

    @Message("Eight of ten")
    String between();

    @Message("In stock")
    String held();

    @Message("To buy")
    String to_buy();

    @Message("For nine of ten")
    String at_most();

    @Message("By month")
    String by_month();

    @Message("Month")
    String month();

    @Message("Middle")
    String middle();

    @Message("Taken only when needed, and no closed visit says yet how often:")
    String unknown();
}
