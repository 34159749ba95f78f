package changeover.billing.tax;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;

/** The tax table as this business has it: its own rows, and ours with what its owner has confirmed. */
@ApplicationScoped
public class TaxTables {

    @Inject
    EntityManager session;

    @Inject
    OwnTaxes own;

    @Inject
    Today today;

    public TaxTable current() {
        return new TaxTable(shipped(), own.rows());
    }

    /**
     * What is charged in the place of a row of the business's own from its first day on, once it is added; nothing is kept.
     *
     * @throws changeover.contracts.words.Refused when it may not be added
     */
    public List<TaxRow> tried(OwnTax.Facts facts) {
        TaxRow row = OwnTax.add(facts).row();
        TaxTable table = current();
        HarmonizedTax.judge(row, table);
        return table.chargedWith(row);
    }

    /** The rows that come with the product, each with the owner's source where the owner confirmed it. */
    public List<TaxRow> shipped() {
        List<TaxConfirmation> confirmed = session.createQuery("from TaxConfirmation", TaxConfirmation.class)
                .getResultList();
        return ShippedTaxes.rows().stream()
                .map(row -> confirmed.stream()
                        .filter(one -> one.isOf(row))
                        .findFirst()
                        .map(one -> one.over(row))
                        .orElse(row))
                .toList();
    }

    /** The shipped rows that no owner of this business has confirmed yet, and that we know from memory only. */
    public List<TaxRow> fromMemory() {
        return shipped().stream().filter(row -> !row.tax().read()).toList();
    }

    /**
     * @param key the row's {@link TaxRow#key()}
     * @throws changeover.contracts.words.Refused when no row that waits for a confirmation has that key
     */
    public TaxConfirmation confirm(String key, TaxConfirmation.Facts facts) {
        TaxRow row = fromMemory().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(
                        () -> Refusal.of("tax.nothing-to-confirm").at("row").thrown());
        TaxConfirmation confirmation = TaxConfirmation.of(row, facts, today.day());
        session.persist(confirmation);
        session.flush();
        return confirmation;
    }
}
