package changeover.web.office;

import changeover.contracts.agreements.ReplacementPrices;
import changeover.contracts.customers.Equipment;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

/** What a machine that took another's place changes of the plan's price, in a sentence. */
@ApplicationScoped
public class ReplacementInWords {

    @Inject
    ReplacementPrices prices;

    /** Empty where there is nothing to say. */
    String of(Equipment machine, Frame frame) {
        MachineWords words = Bundles.of(MachineWords.class, frame.locale());
        return prices.of(machine, frame.today())
                .map(change -> {
                    String plan = change.plan().in(frame.locale());
                    String last = frame.inWords(change.last());
                    if (change.difference().isZero()) {
                        return words.price_stays(plan);
                    }
                    return change.difference().isNegative()
                            ? words.price_less(
                                    plan, change.difference().negated().format(frame.locale()), last)
                            : words.price_more(plan, change.difference().format(frame.locale()), last);
                })
                .orElse("");
    }
}
