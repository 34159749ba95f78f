package changeover.contracts.customers;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Set;

/**
 * A home or a customer written on a page needs a key for the homes file: its own words, and a number behind them when
 * they are taken.
 */
@ApplicationScoped
class Keys {

    private static final int LONGEST = 180;

    private static final Set<String> TABLES = Set.of("customer", "home");

    @Inject
    EntityManager rows;

    String freeFor(String table, String words) {
        if (!TABLES.contains(table)) {
            throw new IllegalArgumentException(table);
        }
        String plain = words.replaceAll("\\s+", " ").strip();
        String key = plain.isEmpty() ? "1" : plain.substring(0, Math.min(plain.length(), LONGEST));
        for (int number = 2; isTaken(table, key); number++) {
            key = plain + " " + number;
        }
        return key;
    }

    private boolean isTaken(String table, String key) {
        return (Boolean) rows.createNativeQuery(
                        "select exists (select from " + table + " where tenant_id = current_tenant() and key = :key)",
                        Boolean.class)
                .setParameter("key", key)
                .getSingleResult();
    }
}
