package changeover.contracts.customers;

import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** The customers of the current business. */
@ApplicationScoped
public class Customers {

    @Inject
    EntityManager rows;

    @Inject
    Keys keys;

    /** A new customer, whose key in the homes file is the name, numbered when it is taken. */
    public Customer add(Customer.Facts facts) {
        return store(Customer.write(keys.freeFor("customer", facts.name()), facts));
    }

    /** A new customer under a key of the file's own. */
    public Customer add(String key, Customer.Facts facts) {
        return store(Customer.write(key, facts));
    }

    private Customer store(Customer customer) {
        rows.persist(customer);
        rows.flush();
        return customer;
    }

    /** Writes a customer's facts anew; empty when there is none of that id here. */
    public Optional<Customer> rewrite(UUID id, Customer.Facts facts, FilledOn form) {
        Optional<Customer> found = Optional.ofNullable(rows.find(Customer.class, id, LockModeType.PESSIMISTIC_WRITE));
        found.ifPresent(customer -> {
            customer.rewrite(facts, form);
            rows.flush();
        });
        return found;
    }

    public Optional<Customer> get(UUID id) {
        return Optional.ofNullable(rows.find(Customer.class, id));
    }

    public Optional<Customer> ofKey(String key) {
        return rows.createQuery("from Customer where key = :key", Customer.class)
                .setParameter("key", key)
                .getResultStream()
                .findFirst();
    }

    public List<Customer> all(Collection<UUID> ids) {
        return rows.createQuery("from Customer where id in :ids order by name, id", Customer.class)
                .setParameter("ids", ids)
                .getResultList();
    }

    /** Customers whose name, telephone or mail address holds the text; capitals do not matter. */
    public List<Customer> find(String text, int limit) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\\\%_\u0000]", "");
        String digits = plain.replaceAll("[^0-9]", "");
        return plain.isEmpty()
                ? List.of()
                : rows.createQuery("""
                                from Customer where lower(name) like :text or lower(email) like :text
                                or (:digits <> '' and replace(replace(phone, '-', ''), ' ', '') like :number)
                                order by name, id
                                """, Customer.class)
                        .setParameter("text", "%" + plain + "%")
                        .setParameter("digits", digits)
                        .setParameter("number", "%" + digits + "%")
                        .setMaxResults(limit)
                        .getResultList();
    }

    /** A page of the customers by name. */
    public List<Customer> page(int from, int count) {
        return rows.createQuery("from Customer order by name, id", Customer.class)
                .setFirstResult(from)
                .setMaxResults(count)
                .getResultList();
    }

    public long count() {
        return rows.createQuery("select count(c) from Customer c", Long.class).getSingleResult();
    }
}
