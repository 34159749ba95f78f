package changeover.billing.runs;

import changeover.billing.runs.Foreseeable.Kind;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a run on a day would issue, and what is odd about it.
 *
 * @param documents that would be issued, in their order
 * @param refused drafts that would stay as they are, and why
 * @param nothing drafts on which everything is included: no run issues them
 */
public record RunPreview(LocalDate day, List<Planned> documents, List<Odd> refused, int nothing) {

    public RunPreview {
        documents = List.copyOf(documents);
        refused = List.copyOf(refused);
    }

    /** @param amount tax included; below nought for a credit note */
    public record Planned(Foreseeable draft, Money amount) {}

    public record Odd(UUID draft, UUID customerId, String customer, Refusal why) {}

    /** The documents of a kind; {@code totals} a currency each. */
    public record OfKind(Kind kind, int drafts, List<Money> totals) {}

    /** How many would be issued. */
    public int drafts() {
        return documents.size();
    }

    /** Of all, tax included, a currency each. */
    public List<Money> totals() {
        return sums(documents);
    }

    /** The kinds that are among them; their sums are together the sum of all. */
    public List<OfKind> kinds() {
        List<OfKind> kinds = new ArrayList<>();
        Arrays.stream(Kind.values()).forEach(kind -> {
            List<Planned> of = of(kind);
            if (!of.isEmpty()) {
                kinds.add(new OfKind(kind, of.size(), sums(of)));
            }
        });
        return kinds;
    }

    /** Those of a kind, or all. */
    public List<Planned> of(@Nullable Kind kind) {
        return documents.stream()
                .filter(one -> kind == null || one.draft().kind() == kind)
                .toList();
    }

    /** Those that somebody should look at before they are issued. */
    public List<Planned> odd() {
        return documents.stream().filter(one -> !one.draft().odd().isEmpty()).toList();
    }

    /** Those whose payer gets a letter, for want of an e-mail address. */
    public List<Planned> withoutMail() {
        return documents.stream().filter(one -> !one.draft().mail()).toList();
    }

    private static List<Money> sums(Collection<Planned> documents) {
        Map<String, Money> sums = new TreeMap<>();
        documents.forEach(one -> sums.merge(one.amount().currency().getCurrencyCode(), one.amount(), Money::plus));
        return List.copyOf(sums.values());
    }
}
