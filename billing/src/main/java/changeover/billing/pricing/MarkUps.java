package changeover.billing.pricing;

import changeover.billing.pricing.MarkUp.Scope;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Which mark-up a part has on a day: its own, else its kind's, else the one for what it costs. */
public record MarkUps(List<MarkUp> rules) {

    public static final MarkUps NONE = new MarkUps(List.of());

    public MarkUps {
        rules = List.copyOf(rules);
    }

    /** Empty where no rule is for such a part on that day. */
    public Optional<MarkUp> on(String code, @Nullable String partKind, Money cost, LocalDate day) {
        return last(Scope.PART, code, day)
                .or(() -> partKind == null ? Optional.empty() : last(Scope.KIND, partKind, day))
                .or(() -> byCost(cost, day));
    }

    /** The rules by cost that hold together on a day, the cheapest parts first; all of one day. */
    public List<MarkUp> byCost(LocalDate day) {
        Optional<LocalDate> written = of(Scope.COST, "", day).map(MarkUp::from).max(Comparator.naturalOrder());
        return written.stream()
                .flatMap(from ->
                        of(Scope.COST, "", day).filter(rule -> rule.from().equals(from)))
                .sorted(Comparator.comparing(MarkUp::costFrom))
                .toList();
    }

    /** What each part and each kind has on a day, the ended ones left out. */
    public List<MarkUp> named(LocalDate day) {
        return rules.stream()
                .filter(rule -> rule.scope() != Scope.COST && !rule.from().isAfter(day))
                .filter(rule -> last(rule.scope(), rule.item(), day)
                        .filter(rule::equals)
                        .isPresent())
                .sorted(Comparator.comparing(MarkUp::scope).thenComparing(MarkUp::item))
                .toList();
    }

    /** The days on which a rule begins or ends, each once. */
    Stream<LocalDate> days() {
        return rules.stream().map(MarkUp::from).distinct();
    }

    private Optional<MarkUp> byCost(Money cost, LocalDate day) {
        return byCost(day).stream()
                .filter(rule -> rule.costFrom().compareTo(cost) <= 0)
                .max(Comparator.comparing(MarkUp::costFrom));
    }

    private Optional<MarkUp> last(Scope scope, String item, LocalDate day) {
        return of(scope, item, day).max(Comparator.comparing(MarkUp::from)).filter(rule -> rule.percent() != null);
    }

    private Stream<MarkUp> of(Scope scope, String item, LocalDate day) {
        return rules.stream()
                .filter(rule -> rule.scope() == scope && rule.item().equals(item))
                .filter(rule -> !rule.from().isAfter(day));
    }
}
