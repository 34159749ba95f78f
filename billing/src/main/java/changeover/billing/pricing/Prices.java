package changeover.billing.pricing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.List;

/** The price book of the business. */
@ApplicationScoped
public class Prices {

    @Inject
    EntityManager session;

    /** Everything ever priced: a day picks from it. */
    public PriceBook book() {
        return new PriceBook(
                entries(session.createQuery("from Price", Price.class).getResultList()));
    }

    /** Only these items, with labour and travel: for the charges of some visits. */
    public PriceBook of(Collection<String> parts) {
        return new PriceBook(
                entries(session.createQuery("from Price where itemKind <> 'part' or itemCode in :parts", Price.class)
                        .setParameter("parts", parts)
                        .getResultList()));
    }

    /** A price from a day on; the same item and day again replaces it. Issued documents keep what they say. */
    public void set(PriceEntry entry) {
        session.createQuery("from Price where itemKind = :kind and itemCode = :code and validFrom = :from", Price.class)
                .setParameter("kind", entry.kind().code())
                .setParameter("code", entry.code())
                .setParameter("from", entry.from())
                .getResultStream()
                .findFirst()
                .ifPresentOrElse(price -> price.says(entry), () -> session.persist(Price.of(entry)));
        session.flush();
    }

    private static List<PriceEntry> entries(List<Price> prices) {
        return prices.stream().map(Price::entry).toList();
    }
}
