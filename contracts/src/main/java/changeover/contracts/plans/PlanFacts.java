package changeover.contracts.plans;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Everything that a plan says, as it is written on the plan's page and as it is copied into an agreement.
 *
 * @param code small letters, digits and hyphens, one a business
 * @param visits how many visits a year it sells; its promises may need more
 * @param price of one year, before tax
 * @param discountPercent off parts and labour that it does not include
 * @param instalments how many the price is paid in, 1 for all at once
 * @param includedMinutes of labour a year beyond its tasks
 * @param coversRepairs whether it promises repairs without charge: in Quebec that may be an additional warranty
 */
public record PlanFacts(
        String code,
        Wording name,
        int visits,
        Money price,
        BigDecimal discountPercent,
        int instalments,
        int includedMinutes,
        boolean coversRepairs,
        List<Promise> tasks,
        List<Included> parts,
        List<Extra> extras) {

    private static final Pattern CODE = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** A task and how often; null as often as the catalogue says. */
    public record Promise(String taskCode, @Nullable Cadence cadence) {}

    /** Parts that the plan gives without charge. */
    public record Included(String partKind, BigDecimal quantityAYear) {}

    /**
     * What further machines cost.
     *
     * @param included how many machines of the kind the plan's own price holds for
     * @param price of each further one, a year, before tax
     */
    public record Extra(String kind, int included, Money price) {}

    public PlanFacts {
        tasks = List.copyOf(tasks);
        parts = List.copyOf(parts);
        extras = List.copyOf(extras);
    }

    /** The price of a year for a home with these machines: the plan's own, and what further ones cost. */
    public Money priceFor(Collection<String> kinds) {
        Money sum = price;
        for (Extra extra : extras) {
            long further = kinds.stream().filter(extra.kind()::equals).count() - extra.included();
            sum = sum.plus(extra.price().times(Math.max(0, further)));
        }
        return sum;
    }

    /** A sentence for each field that cannot be so; none when it can. */
    public List<Refusal> refusals() {
        var refusals = new ArrayList<Refusal>();
        if (!CODE.matcher(code).matches()) {
            refusals.add(Refusal.of("plan.code-shape", Map.of("code", code)).at("code"));
        }
        if (name.en().isBlank()) {
            refusals.add(Refusal.of("plan.name-in-both").at("nameEn"));
        }
        if (name.fr().isBlank()) {
            refusals.add(Refusal.of("plan.name-in-both").at("nameFr"));
        }
        if (visits < 0 || visits > 24) {
            refusals.add(Refusal.of("plan.visits").at("visits"));
        }
        if (price.isNegative()) {
            refusals.add(Refusal.of("plan.price").at("price"));
        }
        if (discountPercent.signum() < 0 || discountPercent.compareTo(HUNDRED) > 0 || discountPercent.scale() > 2) {
            refusals.add(Refusal.of("plan.discount").at("discountPercent"));
        }
        if (instalments < 1 || instalments > 12) {
            refusals.add(Refusal.of("plan.instalments").at("instalments"));
        }
        if (includedMinutes < 0 || includedMinutes > 100_000) {
            refusals.add(Refusal.of("plan.included-minutes").at("includedMinutes"));
        }
        promises(refusals);
        return refusals;
    }

    private void promises(List<Refusal> refusals) {
        var seen = new HashSet<String>();
        for (Promise promise : tasks) {
            if (!seen.add(promise.taskCode())) {
                refusals.add(Refusal.of("plan.task-twice", Map.of("task", promise.taskCode()))
                        .at("tasks"));
            }
        }
        for (Extra extra : extras) {
            if (!seen.add("extra " + extra.kind())) {
                refusals.add(Refusal.of("plan.extra-twice", Map.of("kind", extra.kind()))
                        .at("extras"));
            }
            if (extra.included() < 0
                    || extra.included() > 1000
                    || extra.price().isNegative()
                    || !extra.price().currency().equals(price.currency())) {
                refusals.add(Refusal.of("plan.extra-price", Map.of("kind", extra.kind()))
                        .at("extras"));
            }
        }
        for (Included part : parts) {
            if (!seen.add("part " + part.partKind())) {
                refusals.add(Refusal.of("plan.part-twice", Map.of("part", part.partKind()))
                        .at("parts"));
            }
            if (part.quantityAYear().signum() <= 0 || part.quantityAYear().scale() > 2) {
                refusals.add(Refusal.of("plan.part-quantity", Map.of("part", part.partKind()))
                        .at("parts"));
            }
        }
    }
}
