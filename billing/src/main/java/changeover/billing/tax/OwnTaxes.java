package changeover.billing.tax;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;

/** The taxes that this business added. */
@ApplicationScoped
public class OwnTaxes {

    @Inject
    EntityManager session;

    @Inject
    Today today;

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

    /** @throws changeover.contracts.words.Refused without a source, or where a tax would be charged twice */
    public OwnTax add(OwnTax.Facts facts) {
        OwnTax tax = OwnTax.add(facts);
        HarmonizedTax.judge(tax.row(), new TaxTable(ShippedTaxes.rows(), rows()));
        session.persist(tax);
        session.flush();
        return tax;
    }

    /**
     * A row gets its last day, or another one while that has not come.
     *
     * @param key the row's {@link TaxRow#key()}
     * @throws changeover.contracts.words.Refused when there is no such row of the business's, it has ended, or the day is before
     *     its first
     */
    public OwnTax end(String key, LocalDate lastDay) {
        OwnTax tax = all().stream()
                .filter(one -> one.row().key().equals(key))
                .findFirst()
                .orElseThrow(() -> Refusal.of("tax.not-found").at("ended").thrown());
        tax.end(lastDay, today.day());
        session.flush();
        return tax;
    }
}
