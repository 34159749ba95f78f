package changeover.billing.ledger;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An agreement that ends in mid-term, worked through every way: what is kept, what of each invoice goes back with its taxes,
 * which instalments fall, and what the customer gets. What was billed last goes back first.
 *
 * @param ended whether it has ended; before that the day is a question
 * @param billed before tax, less what credit notes gave back
 * @param paid taxes in, of the documents of the plan
 * @param waiting drafts of instalments that were not issued
 * @param settled how it was settled last, null while it was not
 */
public record Settlement(
        UUID agreementId,
        LocalDate day,
        boolean ended,
        RefundPolicy policy,
        Money price,
        Money billed,
        Money paid,
        List<Way> ways,
        List<Waiting> waiting,
        @Nullable Settled settled) {

    /**
     * A settlement that was written down.
     *
     * @param kept before tax, earned from its day on
     */
    public record Settled(LocalDate day, Money kept) {}

    /** An instalment that was not asked for yet, before tax. */
    public record Waiting(UUID id, int instalment, Money net) {}

    /** What goes back of one invoice: by the position of its lines, before tax, and its taxes. */
    public record Part(UUID invoiceId, String label, Map<Integer, Money> lines, Money net, Money tax) {

        public Part {
            lines = Map.copyOf(lines);
        }
    }

    /**
     * One way.
     *
     * @param chosen the one that the place asks for
     * @param credit before tax
     * @param total with taxes
     * @param giveBack what was paid beyond what is owed then
     * @param stillToBill what is kept and was never billed, before tax
     */
    public record Way(
            RefundWay way,
            boolean chosen,
            Money kept,
            Money credit,
            Money total,
            Money giveBack,
            Money stillToBill,
            List<Part> parts) {

        /**
         * What each instalment still asks for when the agreement is settled this way: those to come first stay as far as what is
         * kept was not billed yet, the one in which that ends asks for the rest of it, and the others fall.
         */
        public Map<UUID, Money> stay(List<Waiting> waiting) {
            Map<UUID, Money> stay = new LinkedHashMap<>();
            Money left = stillToBill;
            for (Waiting one : waiting) {
                Money part = left.compareTo(one.net()) < 0 ? left : one.net();
                stay.put(one.id(), part);
                left = left.minus(part);
            }
            return stay;
        }

        /** What the business keeps when it is settled this way, never more than was billed and is still to be billed. */
        Settled settled(LocalDate day, Money billed, List<Waiting> waiting) {
            return new Settled(day, stay(waiting).values().stream().reduce(billed.minus(credit), Money::plus));
        }
    }

    /** One document of the plan as it stands: what of each line and of the whole is not credited yet. */
    record Billed(UUID id, String label, Map<Integer, Money> left, Money total, Money paid, Taxes taxes) {

        /** What of the taxes goes back with so much of the lines. */
        interface Taxes {
            Money back(Map<Integer, Money> lines);
        }

        Money net(Money nought) {
            return left.values().stream().reduce(nought, Money::plus);
        }
    }

    static Settlement of(
            UUID agreement,
            boolean ended,
            RefundPolicy policy,
            Cancelled cancelled,
            List<Billed> billed,
            List<Waiting> waiting,
            @Nullable Settled settled) {
        Money nought = Money.zero(cancelled.plan().price().currency());
        Money net = billed.stream().map(one -> one.net(nought)).reduce(nought, Money::plus);
        Money paid = billed.stream().map(Billed::paid).reduce(nought, Money::plus);
        Money total = billed.stream().map(Billed::total).reduce(nought, Money::plus);
        Money least = policy.ways().stream()
                .map(cancelled::kept)
                .min(Comparator.naturalOrder())
                .orElse(nought);
        Optional<RefundWay> asked = Arrays.stream(RefundWay.values())
                .filter(way ->
                        policy.ways().contains(way) && cancelled.kept(way).equals(least))
                .findFirst();
        List<Way> ways = Arrays.stream(RefundWay.values())
                .map(way -> {
                    Money kept = cancelled.kept(way);
                    List<Part> parts = parts(billed, net.minus(kept).aboveNought(), nought);
                    Money credit = parts.stream().map(Part::net).reduce(nought, Money::plus);
                    Money back = parts.stream().map(Part::tax).reduce(credit, Money::plus);
                    return new Way(
                            way,
                            asked.filter(way::equals).isPresent(),
                            kept,
                            credit,
                            back,
                            paid.minus(total.minus(back)).aboveNought(),
                            kept.minus(net).aboveNought(),
                            parts);
                })
                .toList();
        return new Settlement(
                agreement,
                cancelled.day(),
                ended,
                policy,
                cancelled.plan().price(),
                net,
                paid,
                ways,
                List.copyOf(waiting),
                settled);
    }

    /** The latest invoice first, its last line first. */
    private static List<Part> parts(List<Billed> billed, Money credit, Money nought) {
        List<Part> parts = new ArrayList<>();
        Money left = credit;
        for (Billed one : billed.reversed()) {
            Map<Integer, Money> lines = new TreeMap<>();
            for (int position : new TreeMap<>(one.left()).descendingKeySet()) {
                Money open = Objects.requireNonNull(one.left().get(position));
                Money part = left.compareTo(open) < 0 ? left : open;
                if (part.isPositive()) {
                    lines.put(position, part);
                    left = left.minus(part);
                }
            }
            if (!lines.isEmpty()) {
                Money net = lines.values().stream().reduce(nought, Money::plus);
                parts.add(
                        new Part(one.id(), one.label(), lines, net, one.taxes().back(lines)));
            }
        }
        return List.copyOf(parts);
    }
}
