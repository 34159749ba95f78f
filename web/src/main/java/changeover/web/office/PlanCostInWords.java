package changeover.web.office;

import changeover.billing.costs.PlanCosts.Reckoned;
import changeover.billing.pricing.Cause;
import changeover.billing.pricing.CostSpread;
import changeover.billing.pricing.Margin;
import changeover.billing.pricing.PlanCost;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.web.session.Bars;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A plan's cost in the words of its reader. */
@ApplicationScoped
class PlanCostInWords {

    @Inject
    Homes homes;

    @Inject
    OwnCatalogue trade;

    PlanCostPages.Answer answer(UUID home, Reckoned found, BigDecimal margin, Frame frame) {
        PlanCost cost = found.cost();
        Catalogue catalogue = trade.catalogue();
        Money total = cost.total();
        Money left = found.price().minus(total);
        return new PlanCostPages.Answer(
                home,
                homes.get(home).map(Home::line).orElse(""),
                said(found.price(), frame),
                said(total, frame),
                said(left, frame),
                Margin.of(found.price(), total)
                        .map(part -> PlanForm.plain(part, frame.locale()))
                        .orElse(""),
                left.isNegative(),
                found.year().visits().size(),
                found.unkept(),
                found.repairs(),
                Arrays.stream(Cause.values())
                        .filter(cause -> cause != Cause.READY || !cost.of(cause).isZero())
                        .map(cause ->
                                new PlanCostPages.Line(cause.code(), said(cost.of(cause), frame), minutes(cost, cause)))
                        .toList(),
                cost.missing().stream()
                        .map(one -> missing(one, catalogue, frame))
                        .toList(),
                PlanForm.plain(margin, frame.locale()),
                cost.priceFor(margin).map(price -> said(price, frame)).orElse(""),
                spread(found.spread(), catalogue, frame),
                svg(cost, frame));
    }

    static PlanCostPages.Missing missing(PlanCost.Missing one, Catalogue catalogue, Frame frame) {
        String kind = one.part().split(" ", 2)[0];
        String part = catalogue
                .findPart(kind)
                .map(found -> found.wording().in(frame.locale()) + one.part().substring(kind.length()))
                .orElse(one.part());
        return new PlanCostPages.Missing(
                one.what().name().toLowerCase(Locale.ROOT).replace('_', '-'), part);
    }

    private static String minutes(PlanCost cost, Cause cause) {
        PlanCost.Minutes minutes = cost.minutes();
        @Nullable
        Integer said = switch (cause) {
            case TASKS -> minutes.tasks();
            case SET_UP -> minutes.setUp();
            case TRAVEL -> minutes.travel();
            case READY -> minutes.ready();
            case PARTS, OVERHEAD -> null;
        };
        return said == null ? "" : String.valueOf(said);
    }

    private static PlanCostPages.@Nullable Spread spread(
            @Nullable CostSpread spread, Catalogue catalogue, Frame frame) {
        return spread == null
                ? null
                : new PlanCostPages.Spread(
                        said(spread.low(), frame),
                        said(spread.middle(), frame),
                        said(spread.high(), frame),
                        spread.visits(),
                        spread.restsOnLittle(),
                        spread.few().stream()
                                .flatMap(kind -> catalogue.kinds().stream()
                                        .filter(one -> one.code().equals(kind))
                                        .map(one -> one.wording().in(frame.locale())))
                                .sorted()
                                .toList());
    }

    private static String svg(PlanCost cost, Frame frame) {
        boolean french = frame.locale().getLanguage().equals("fr");
        List<Bars.Bar> bars = Arrays.stream(Cause.values())
                .filter(cause -> !cost.of(cause).isZero())
                .map(cause ->
                        new Bars.Bar(CostNames.of(cause, french), cost.of(cause).minor(), said(cost.of(cause), frame)))
                .toList();
        return Bars.svg(
                "cost",
                french ? "Le coût d’une année, par cause" : "The cost of a year, by cause",
                french ? "Ensemble " + said(cost.total(), frame) + "." : "Together " + said(cost.total(), frame) + ".",
                bars);
    }

    static String said(Money money, Frame frame) {
        return money.format(frame.locale());
    }
}
