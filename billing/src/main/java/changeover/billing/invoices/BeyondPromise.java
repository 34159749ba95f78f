package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Work past the amount that the customer accepted is not asked for before there is a new yes. */
record BeyondPromise(Map<UUID, Money> promised) {

    /** Code of the refusal; its facts are {@code beyond}, {@code accepted} and {@code asked}, before taxes. */
    static final String CODE = "invoice.beyond-accepted";

    /** Why the draft may not be issued; the first of its visits that goes beyond says by how much. */
    Optional<Refusal> refusal(Waiting draft) {
        for (var visit : asked(draft).entrySet()) {
            Money most = promised.get(visit.getKey());
            if (most != null && visit.getValue().compareTo(most) > 0) {
                Money accepted = most.isNegative() ? Money.zero(most.currency()) : most;
                return Optional.of(Refusal.of(
                        CODE,
                        Map.of(
                                "beyond", visit.getValue().minus(accepted),
                                "accepted", accepted,
                                "asked", visit.getValue())));
            }
        }
        return Optional.empty();
    }

    static Set<UUID> visits(Collection<Waiting> drafts) {
        Set<UUID> visits = new HashSet<>();
        drafts.forEach(draft -> visits.addAll(asked(draft).keySet()));
        return visits;
    }

    /**
     * By visit; a line that a person wrote belongs to the draft's own visit, where it has but one: what was joined was judged
     * before. What is given back asks for nothing.
     */
    private static Map<UUID, Money> asked(Waiting draft) {
        Map<UUID, Money> asked = new HashMap<>();
        if (draft.kind() == DocumentKind.CREDIT) {
            return asked;
        }
        boolean joined = draft.lines().stream()
                .map(LineRow::visitId)
                .anyMatch(visit -> visit != null && !visit.equals(draft.visitId()));
        for (LineRow line : draft.lines()) {
            UUID visit = line.visitId() == null && !joined ? draft.visitId() : line.visitId();
            if (visit != null) {
                asked.merge(visit, new Money(line.netMinor(), draft.currency()), Money::plus);
            }
        }
        return asked;
    }
}
