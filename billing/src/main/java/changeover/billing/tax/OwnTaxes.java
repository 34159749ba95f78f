package changeover.billing.tax;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** The taxes that this business added. */
@ApplicationScoped
public class OwnTaxes {

    @Inject
    EntityManager session;

    public List<OwnTax> all() {
        return session.createQuery("from OwnTax order by region, validFrom, position, code", OwnTax.class)
                .getResultList();
    }

    /** As the tax table reads them, in the order in which they are printed. */
    public List<TaxRow> rows() {
        return session.createQuery("from OwnTax order by position, code", OwnTax.class)
                .getResultStream()
                .map(OwnTax::row)
                .toList();
    }

    public OwnTax add(OwnTax.Facts facts) {
        OwnTax tax = OwnTax.add(facts);
        session.persist(tax);
        session.flush();
        return tax;
    }

    /** @throws changeover.contracts.words.Refused when there is no such tax, or the day is before its first */
    public void end(UUID id, LocalDate lastDay) {
        OwnTax tax = session.find(OwnTax.class, id);
        if (tax == null) {
            throw Refusal.of("tax.not-found").thrown();
        }
        tax.end(lastDay);
        session.flush();
    }
}
