package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** How a visit's hour stands, what became of it, and how the business kept its word. */
@MessageBundle("standing")
public interface StandingWords {

    @Message("How it stands")
    String heading();

    @Message("no day yet")
    String without_day();

    @Message("proposed")
    String proposed();

    @Message("confirmed")
    String confirmed();

    @Message("under way")
    String under_way();

    @Message("closed")
    String done();

    @Message("cancelled")
    String cancelled();

    @Message("no access")
    String no_access();

    @Message("not kept by us")
    String not_kept();

    @Message("What became of its hour")
    String history();

    @Message("{day}, {name}: {what}")
    String said(String day, String name, String what);

    @Message("{day}: {what}")
    String said_by_nobody(String day, String what);

    @Message("{what}: {why}")
    String with_why(String what, String why);

    @Message("{day} at {hour}")
    String hour(String day, String hour);

    @Message("given to {name}, {when}")
    String given(String name, String when);

    @Message("the customer was told {when}")
    String told(String when);

    @Message("moved from {was} to {now}")
    String moved(String was, String now);

    @Message("handed from {was} to {now}")
    String handed(String was, String now);

    @Message("{was} was taken off")
    String taken_off(String was);

    @Message("{what}, the customer asked")
    String customer_asked(String what);

    @Message("{what}, by us")
    String by_us(String what);

    @Message("Why it moves")
    String why_moves();

    @Message("They were told this hour: it is kept who asked and why.")
    String why_hint();

    @Message("Who asked for it")
    String who_asked();

    @Message("Choose")
    String choose();

    @Message("the customer")
    String customer();

    @Message("we ourselves")
    String us();

    @Message("Everybody was told their hour")
    String tell_all();

    @Message("They were told it")
    String tell();

    @Message("Our word")
    String word();

    @Message("From {from} to {until}.")
    String word_days(String from, String until);

    @Message(
            "{#if all == 1}{#if kept == 1}The one visit was made as we had said.{#else}The one visit was not made as we had said.{/if}{#else}{kept} of {all} visits were made as we had said, {percent}%.{/if}")
    String word_kept(int kept, int all, int percent);

    @Message("No visit has ended in these weeks.")
    String word_none();

    @Message("Counts against us")
    String against_us();

    @Message("Does not count against us")
    String not_against_us();

    @Message("We did not come")
    String we_did_not_come();

    @Message("We moved an hour that was told")
    String we_moved();

    @Message("The customer moved it")
    String customer_moved();

    @Message("Nobody let us in")
    String nobody_let_us_in();

    @Message("Visits")
    String visits();
}
