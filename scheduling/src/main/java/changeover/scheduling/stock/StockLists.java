package changeover.scheduling.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What lay where at the end of a day: the sum of every movement up to it, all places by one statement. */
@ApplicationScoped
public class StockLists {

    @Inject
    EntityManager rows;

    /** By place and part; what is at nought is left out. */
    public List<Held> held(LocalDate day, Collection<UUID> places, @Nullable String partCode) {
        if (places.isEmpty()) {
            return List.of();
        }
        TypedQuery<Object[]> ask = rows.createQuery(
                        "select placeId, partCode, sum(quantity) from StockMovement"
                                + " where day <= :day and placeId in :places"
                                + (partCode == null ? "" : " and partCode = :part")
                                + " group by placeId, partCode having sum(quantity) <> 0 order by partCode, placeId",
                        Object[].class)
                .setParameter("day", day)
                .setParameter("places", places);
        if (partCode != null) {
            ask.setParameter("part", partCode);
        }
        return ask.getResultStream()
                .map(row -> new Held((UUID) row[0], (String) row[1], plain((BigDecimal) row[2])))
                .toList();
    }

    private static BigDecimal plain(BigDecimal quantity) {
        BigDecimal bare = quantity.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
