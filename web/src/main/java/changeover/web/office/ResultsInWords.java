package changeover.web.office;

import changeover.billing.costs.DealResult;
import changeover.billing.costs.PlanResults.Over;
import changeover.billing.costs.PriceRise;
import changeover.billing.costs.Results;
import changeover.billing.pricing.Cause;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.money.Money;
import changeover.web.session.Bars;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What plans earned and cost, in the words of its reader. */
@ApplicationScoped
class ResultsInWords {

    @Inject
    OwnCatalogue trade;

    String code(Over over) {
        return over == Over.YEAR ? "year" : "term";
    }

    PlanResultPages.View view(Results on, PriceRise rise, Frame frame) {
        Money left = on.earned().minus(on.cost());
        Map<Cause, Money> causes = on.causes();
        Catalogue catalogue = trade.catalogue();
        return new PlanResultPages.View(
                frame.inWords(on.day()),
                on.day().toString(),
                code(on.over()),
                rows(on, frame),
                said(on.earned(), frame),
                said(on.cost(), frame),
                said(left, frame),
                left.isNegative(),
                margins(on, frame),
                Arrays.stream(Cause.values())
                        .filter(cause -> causes.containsKey(cause) && cause != Cause.SET_UP)
                        .map(cause -> new PlanResultPages.Line(
                                cause.code(), said(causes.getOrDefault(cause, Money.zero(on.currency())), frame)))
                        .toList(),
                costs(causes, frame),
                on.missing().stream()
                        .map(one -> PlanCostInWords.missing(one, catalogue, frame))
                        .toList(),
                rise.plans().stream().map(plan -> rise(plan, frame)).toList(),
                said(rise.sum(PriceRise.OfDeal::now), frame),
                said(rise.sum(PriceRise.OfDeal::rise), frame),
                said(rise.sum(PriceRise.OfDeal::now).plus(rise.sum(PriceRise.OfDeal::rise)), frame),
                rise.percent().toPlainString());
    }

    static List<PlanResultPages.Row> rows(Results on, Frame frame) {
        return on.byPlan().stream().map(plan -> row(plan, frame)).toList();
    }

    private static PlanResultPages.Row row(Results.OfPlan plan, Frame frame) {
        return new PlanResultPages.Row(
                plan.planId(),
                plan.plan().in(frame.locale()),
                plan.deals().size(),
                plan.losing(),
                said(plan.earned(), frame),
                said(plan.cost(), frame),
                said(plan.left(), frame),
                percent(plan.margin(), frame),
                plan.left().isNegative());
    }

    private static PlanResultPages.Rise rise(PriceRise.OfPlan plan, Frame frame) {
        return new PlanResultPages.Rise(
                plan.planId(),
                plan.plan().in(frame.locale()),
                plan.agreements(),
                said(plan.now(), frame),
                said(plan.rise(), frame),
                said(plan.now().plus(plan.rise()), frame),
                percent(plan.margin(), frame),
                percent(plan.marginThen(), frame),
                plan.losing(),
                plan.wouldLose());
    }

    static String percent(Optional<BigDecimal> margin, Frame frame) {
        return margin.map(part -> PlanForm.plain(part, frame.locale())).orElse("");
    }

    PlanResultPages.Deals deals(Results listed, @Nullable UUID plan, Leaf leaf, Frame frame) {
        Money left = listed.earned().minus(listed.cost());
        return new PlanResultPages.Deals(
                frame.inWords(listed.day()),
                listed.day().toString(),
                code(listed.over()),
                plan == null || listed.deals().isEmpty()
                        ? ""
                        : listed.deals().getFirst().deal().plan().in(frame.locale()),
                plan,
                leaf.shown(listed.deals()).stream().map(one -> deal(one, frame)).toList(),
                leaf,
                said(listed.earned(), frame),
                said(listed.cost(), frame),
                said(left, frame),
                left.isNegative());
    }

    private static PlanResultPages.DealRow deal(DealResult one, Frame frame) {
        return new PlanResultPages.DealRow(
                one.deal().agreementId(),
                one.deal().number(),
                one.deal().plan().in(frame.locale()),
                one.deal().homeId(),
                one.deal().home(),
                one.visits(),
                said(one.earned(), frame),
                said(one.cost(), frame),
                said(one.left(), frame),
                one.loses());
    }

    /** Percent of what was earned, a bar each; a plan that earned nothing has none. */
    private static String margins(Results on, Frame frame) {
        boolean french = frame.locale().getLanguage().equals("fr");
        List<Bars.Bar> bars = on.byPlan().stream()
                .flatMap(plan -> plan.margin().stream()
                        .map(part -> new Bars.Bar(
                                plan.plan().in(frame.locale()),
                                part.movePointRight(1).longValue(),
                                PlanForm.plain(part, frame.locale()) + (french ? "\u00a0%" : "%"))))
                .toList();
        long lose =
                on.byPlan().stream().filter(plan -> plan.left().isNegative()).count();
        String words = french
                ? lose == 0
                        ? "Aucune formule ne perd d’argent."
                        : "Formules qui perdent de l’argent\u00a0: " + lose + "."
                : lose == 0 ? "No plan loses money." : "Plans that lose money: " + lose + ".";
        return bars.isEmpty() ? "" : Bars.svg("margins", french ? "Marge par formule" : "Margin by plan", words, bars);
    }

    private static String costs(Map<Cause, Money> causes, Frame frame) {
        boolean french = frame.locale().getLanguage().equals("fr");
        List<Bars.Bar> bars = Arrays.stream(Cause.values())
                .flatMap(cause -> Optional.ofNullable(causes.get(cause)).stream()
                        .filter(amount -> !amount.isZero())
                        .map(amount -> new Bars.Bar(
                                cause == Cause.TASKS
                                        ? french ? "Travail sur place" : "Work on site"
                                        : CostNames.of(cause, french),
                                amount.minor(),
                                said(amount, frame))))
                .toList();
        return bars.isEmpty() ? "" : Bars.svg("causes", french ? "Coût par cause" : "Cost by cause", "", bars);
    }

    static String said(Money money, Frame frame) {
        return money.format(frame.locale());
    }
}
