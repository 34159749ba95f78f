package changeover.scheduling.stock;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.StockMovement.Cause;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What lies where is the sum of what came and went. Nothing goes below zero without a named reason, and an operation's id
 * that was seen before moves nothing again.
 */
@ApplicationScoped
public class Stock {

    static final BigDecimal MOST = new BigDecimal("99999");

    @Inject
    EntityManager rows;

    @Inject
    Parts parts;

    @Inject
    Today today;

    /** Parts come onto a place from outside. */
    public void receive(UUID operation, UUID place, List<Amount> amounts, @Nullable String why) {
        SortedMap<String, BigDecimal> coming = checked(amounts);
        if (isNew(operation, place)) {
            write(MovementKind.RECEIPT, place, coming, new Cause(operation, null, why));
        }
    }

    /** Parts go from one place to another. */
    public void move(UUID operation, UUID from, UUID to, List<Amount> amounts, @Nullable String why) {
        SortedMap<String, BigDecimal> going = checked(amounts);
        if (from.equals(to)) {
            throw Refusal.of("stock.same-place").at("to").thrown();
        }
        // Places are locked in one order, so that two moves across each other do not wait for one another.
        boolean first = from.compareTo(to) < 0;
        lock(first ? from : to);
        lock(first ? to : from);
        if (isNew(operation, from)) {
            refuseShort(from, going, why);
            write(MovementKind.MOVE, from, negated(going), new Cause(operation, null, why));
            write(MovementKind.MOVE, to, going, new Cause(operation, null, why));
        }
    }

    /**
     * Somebody counted: the difference to what should be there is written as a movement, for a reason.
     *
     * @param counted what lies there; nought is an answer
     */
    public void count(UUID operation, UUID place, List<Amount> counted, String why) {
        if (why.isBlank()) {
            throw Refusal.of("stock.count-why").at("why").thrown();
        }
        SortedMap<String, BigDecimal> found = new TreeMap<>();
        for (Amount amount : counted) {
            refuseUnreadable(amount, true);
            found.merge(amount.partCode(), amount.quantity(), BigDecimal::add);
        }
        if (isNew(operation, place)) {
            Map<String, BigDecimal> should = onHand(place);
            found.replaceAll((part, there) -> there.subtract(should.getOrDefault(part, BigDecimal.ZERO)));
            found.values().removeIf(difference -> difference.signum() == 0);
            write(MovementKind.COUNT, place, found, new Cause(operation, null, why));
        }
    }

    /**
     * A part is used at a visit.
     *
     * @param why the named reason when the place holds less, else null
     * @throws Refused when it holds less and no reason is named
     */
    public void use(UUID operation, UUID place, Amount amount, UUID visit, @Nullable String why) {
        SortedMap<String, BigDecimal> used = checked(List.of(amount));
        if (isNew(operation, place)) {
            refuseShort(place, used, why);
            write(MovementKind.USE, place, negated(used), new Cause(operation, visit, why));
        }
    }

    /** A part is left at a home or posted to it, without a visit. */
    void give(UUID operation, UUID place, Amount amount, String how) {
        SortedMap<String, BigDecimal> going = checked(List.of(amount));
        if (isNew(operation, place)) {
            refuseShort(place, going, null);
            write(MovementKind.GIVE, place, negated(going), new Cause(operation, null, how));
        }
    }

    /** A part goes back to its place: it was not used after all, or was brought back from a visit. */
    public void giveBack(UUID operation, UUID place, Amount amount, @Nullable UUID visit, @Nullable String why) {
        SortedMap<String, BigDecimal> back = checked(List.of(amount));
        if (isNew(operation, place)) {
            write(MovementKind.RETURN, place, back, new Cause(operation, visit, why));
        }
    }

    /** A part leaves a place for whom it was bought from. */
    public void sendBack(UUID operation, UUID place, Amount amount) {
        SortedMap<String, BigDecimal> back = checked(List.of(amount));
        if (isNew(operation, place)) {
            refuseShort(place, back, null);
            write(MovementKind.RETURN, place, negated(back), new Cause(operation, null, null));
        }
    }

    /** What lies at a place, by part; what is at nought is left out. */
    public Map<String, BigDecimal> onHand(UUID place) {
        Map<String, BigDecimal> there = new LinkedHashMap<>();
        rows.createQuery(
                        "select partCode, sum(quantity) from StockMovement where placeId = :place group by partCode"
                                + " having sum(quantity) <> 0 order by partCode",
                        Object[].class)
                .setParameter("place", place)
                .getResultList()
                .forEach(row -> there.put((String) row[0], ((BigDecimal) row[1]).stripTrailingZeros()));
        return there;
    }

    public BigDecimal onHand(UUID place, String partCode) {
        return onHand(place).getOrDefault(partCode, BigDecimal.ZERO);
    }

    /** Every movement at a place, newest first. */
    public List<StockMovement> movements(UUID place, int most) {
        return rows.createQuery(
                        "from StockMovement where placeId = :place order by day desc, id desc", StockMovement.class)
                .setParameter("place", place)
                .setMaxResults(most)
                .getResultList();
    }

    public List<StockMovement> ofVisit(UUID visit) {
        return rows.createQuery("from StockMovement where visitId = :visit order by id", StockMovement.class)
                .setParameter("visit", visit)
                .getResultList();
    }

    /** Where the parts of an operation came from. */
    public Optional<UUID> placeOf(UUID operation) {
        return rows.createQuery("from StockMovement where operationId = :operation", StockMovement.class)
                .setParameter("operation", operation)
                .getResultStream()
                .map(StockMovement::placeId)
                .findFirst();
    }

    private boolean isNew(UUID operation, UUID place) {
        lock(place);
        return rows.createQuery("select count(*) from StockMovement where operationId = :operation", Long.class)
                        .setParameter("operation", operation)
                        .getSingleResult()
                == 0;
    }

    /** Sums at a place are only right while nobody else writes there. */
    void lock(UUID place) {
        boolean there = !rows.createNativeQuery("select id from stock_place where id = :place for update", Object.class)
                .setParameter("place", place)
                .getResultList()
                .isEmpty();
        if (!there) {
            throw Refusal.of("stock.place-not-found").at("place").thrown();
        }
    }

    private void refuseShort(UUID place, SortedMap<String, BigDecimal> going, @Nullable String why) {
        if (why != null && !why.isBlank()) {
            return;
        }
        Map<String, BigDecimal> there = onHand(place);
        List<Refusal> refusals = new ArrayList<>();
        going.forEach((part, quantity) -> {
            BigDecimal held = there.getOrDefault(part, BigDecimal.ZERO);
            if (held.compareTo(quantity) < 0) {
                refusals.add(Refusal.of("stock.short", Map.of("part", part, "held", held))
                        .at("short"));
            }
        });
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    private SortedMap<String, BigDecimal> checked(List<Amount> amounts) {
        SortedMap<String, BigDecimal> sums = new TreeMap<>();
        for (Amount amount : amounts) {
            refuseUnreadable(amount, false);
            sums.merge(amount.partCode(), amount.quantity(), BigDecimal::add);
        }
        if (sums.isEmpty()) {
            throw Refusal.of("stock.nothing").at("quantity").thrown();
        }
        return sums;
    }

    private void refuseUnreadable(Amount amount, boolean noughtIsFine) {
        if (parts.find(amount.partCode()).isEmpty()) {
            throw Refusal.of("stock.part-not-found").at("part").thrown();
        }
        BigDecimal quantity = amount.quantity();
        if (quantity.signum() < 0
                || quantity.signum() == 0 && !noughtIsFine
                || quantity.compareTo(MOST) > 0
                || quantity.stripTrailingZeros().scale() > 4) {
            throw Refusal.of("stock.quantity").at("quantity").thrown();
        }
    }

    private static SortedMap<String, BigDecimal> negated(SortedMap<String, BigDecimal> amounts) {
        SortedMap<String, BigDecimal> out = new TreeMap<>(amounts);
        out.replaceAll((_, quantity) -> quantity.negate());
        return out;
    }

    private void write(MovementKind kind, UUID place, Map<String, BigDecimal> amounts, Cause cause) {
        amounts.forEach(
                (part, quantity) -> rows.persist(StockMovement.of(kind, part, place, quantity, cause, today.day())));
        rows.flush();
    }
}
