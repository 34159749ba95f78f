package changeover.scheduling.stock;

import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.StockMovement.Cause;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/**
 * What was counted on an earlier day: the difference to what should have lain there at its end is a movement of that day, so
 * that what came and went since stays.
 */
@ApplicationScoped
class EarlierCounts {

    @Inject
    EntityManager rows;

    @Inject
    Stock stock;

    /** What lay at a place at the end of a day, by part. */
    private Map<String, BigDecimal> onHand(UUID place, LocalDate day) {
        Map<String, BigDecimal> there = new HashMap<>();
        rows.createQuery(
                        "select partCode, sum(quantity) from StockMovement where placeId = :place and day <= :day"
                                + " group by partCode",
                        Object[].class)
                .setParameter("place", place)
                .setParameter("day", day)
                .getResultList()
                .forEach(row -> there.put((String) row[0], ((BigDecimal) row[1]).stripTrailingZeros()));
        return there;
    }

    /**
     * @param counted known parts, each once; nought is an answer
     * @return the differences that were written, by part
     */
    SortedMap<String, BigDecimal> count(LocalDate day, UUID place, List<Amount> counted, String why) {
        stock.lock(place);
        Map<String, BigDecimal> should = onHand(place, day);
        SortedMap<String, BigDecimal> differences = new TreeMap<>();
        for (Amount amount : counted) {
            BigDecimal difference = amount.quantity().subtract(should.getOrDefault(amount.partCode(), BigDecimal.ZERO));
            if (difference.signum() != 0) {
                differences.put(amount.partCode(), difference);
            }
        }
        var cause = new Cause(UUID.randomUUID(), null, why);
        differences.forEach((part, difference) ->
                rows.persist(StockMovement.of(MovementKind.COUNT, part, place, difference, cause, day)));
        rows.flush();
        return differences;
    }
}
