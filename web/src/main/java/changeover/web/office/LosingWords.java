package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of which plans lose money, and of visits against their plan. */
@MessageBundle("losing")
public interface LosingWords {
    @Message("Which plans lose money")
    String heading();

    @Message("Over")
    String over();

    @Message("The terms that hold on this day, since their first day")
    String over_term();

    @Message("The calendar year to this day")
    String over_year();

    @Message("These costs are written down nowhere, so the plans cost more than is said here:")
    String missing_lead();

    @Message("Plans")
    String by_plan();

    @Message("No plan earned or cost anything by this day.")
    String none();

    @Message("The agreements")
    String agreements_page();

    @Message("Margin by plan: what is left of what was earned")
    String margin_by_plan();

    @Message("Plan")
    String plan();

    @Message("Cost")
    String cost();

    @Message("Margin")
    String margin();

    @Message("Left")
    String left();

    @Message("loses money")
    String loses();

    @Message("1 of them loses money")
    String one_loses();

    @Message("{count} of them lose money")
    String some_lose(int count);

    @Message("{part}%")
    String percent(String part);

    @Message(
            "Earned as the plan’s price is split over its promises; cost of closed visits, returns and trips for nothing at the costs of their day, of both where two went (a trip that is priced counts once), with the parts and minutes that the plan gave and the parts left or posted between visits. What a customer paid for besides is in neither.")
    String how();

    @Message("Cost by cause")
    String by_cause();

    @Message("Work on site, set-up included")
    String on_site();

    @Message("Minutes of other work that the plans gave")
    String given();

    @Message("If prices rise at renewal")
    String rise();

    @Message("Rise, in percent")
    String rise_percent();

    @Message("A year now")
    String now();

    @Message("More")
    String more();

    @Message("A year then")
    String then();

    @Message("No agreement holds on this day.")
    String none_in_force();

    @Message(
            "Of each agreement in force the percentage of its own price, before tax. Margins are of what its term earned and cost so far: earned so much more, cost the same. Who would then not renew is not foreseen.")
    String rise_how();

    @Message("Agreements: earned and cost")
    String agreements_heading();

    @Message("Home")
    String home();

    @Message("Visits")
    String trips();

    @Message("Visits against their plan")
    String minutes_heading();

    @Message("By")
    String by();

    @Message("Technician")
    String technician();

    @Message("Kind of machine")
    String kind();

    @Message("Show")
    String show();

    @Message("No visit of a plan was closed in these days; choose other days.")
    String no_visits();

    @Message("Visits")
    String visits();

    @Message("1 came again")
    String one_return();

    @Message("{count} came again")
    String returns(int count);

    @Message("Minutes planned")
    String planned();

    @Message("Minutes taken")
    String actual();

    @Message("Work at cost")
    String labour();

    @Message("Parts at cost")
    String parts();

    @Message("foreseen {amount}")
    String foreseen(String amount);

    @Message("Some costs are not written down; these sums are at least so much.")
    String not_whole();

    @Message(
            "Planned minutes are those of the tasks with set-up; a return was foreseen by nobody. Where two go, the minutes of both count. Work that was charged extra is in neither. Costs are those of the visit’s day.")
    String minutes_how();

    @Message("A visit to several kinds of machine is shared among them as their tasks were planned.")
    String kind_how();

    @Message("Margin so far")
    String margin_now();

    @Message("At the new prices")
    String margin_then();

    @Message("1 would lose money even then")
    String one_would();

    @Message("{count} would lose money even then")
    String some_would(int count);

    @Message("loses money even then")
    String would_lose();

    @Message("only those that would lose money even then")
    String only_losing();

    @Message("None of them would lose money at these prices.")
    String none_would();

    @Message("Prices raised by {percent}%")
    String rise_of(String percent);

    @Message("Left so far")
    String left_so_far();

    @Message("Left at the new prices")
    String left_then();

    @Message("Visits with their cost")
    String visits_heading();

    @Message("Visits behind the line")
    String behind_heading();

    @Message("Visit")
    String visit();

    @Message("Visit of the plan")
    String how_planned();

    @Message("Came again")
    String how_return();

    @Message("Nobody let us in")
    String how_no_access();

    @Message("Left or posted")
    String how_sent();

    @Message("At another visit")
    String how_beside();

    @Message("Minutes given")
    String given_short();

    @Message("No visit cost anything by this day.")
    String none_cost();
}
