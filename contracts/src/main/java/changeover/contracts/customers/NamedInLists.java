package changeover.contracts.customers;

import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What a list names is found by its key; a home also by its address, a customer by name, a machine by what it is called in
 * its home, as long as only one is called so.
 */
@ApplicationScoped
public class NamedInLists {

    private static final String HOMES = """
            select h.id, h.key, h.street, concat_ws(' ', h.street, h.unit_label), concat_ws(' ', h.street, h.city),
                   concat_ws(' ', h.street, h.unit_label, h.city), concat_ws(' ', h.street, h.unit_label, h.city, h.postal)
              from home h
             where not exists (select from home_merge m where m.tenant_id = h.tenant_id and m.other_id = h.id
                     and not exists (select from home_merge_undoing u
                           where u.tenant_id = m.tenant_id and u.merge_id = m.id))""";

    private static final String CUSTOMERS = "select id, key, name from customer";

    @Inject
    AgroalDataSource datasource;

    @Inject
    AllEquipment equipment;

    /** Rows by everything they may be called. */
    public static final class Names {

        private final Map<String, UUID> keys = new HashMap<>();
        private final Map<String, Set<UUID>> called = new HashMap<>();
        private final String unknown;
        private final String several;

        private Names(String unknown, String several) {
            this.unknown = unknown;
            this.several = several;
        }

        private void add(UUID id, String key, Collection<String> names) {
            keys.put(key, id);
            names.forEach(name -> called.computeIfAbsent(Folded.of(name), _ -> new LinkedHashSet<>())
                    .add(id));
        }

        /** @throws changeover.contracts.words.Refused at its column, for a name that nobody or more than one has */
        public UUID find(BroughtFile.Row row, String title) {
            String said = row.cell(title);
            UUID byKey = keys.get(said);
            if (byKey != null) {
                return byKey;
            }
            Set<UUID> byName = called.getOrDefault(Folded.of(said), Set.of());
            if (byName.size() == 1) {
                return byName.iterator().next();
            }
            throw Refusal.of(byName.isEmpty() ? unknown : several, Map.of("said", said))
                    .at(title)
                    .thrown();
        }
    }

    public Names homes() {
        return read(HOMES, new Names("brought.home-unknown", "brought.homes-several"));
    }

    public Names customers() {
        return read(CUSTOMERS, new Names("brought.customer-unknown", "brought.customers-several"));
    }

    private Names read(String sql, Names names) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement ask = connection.prepareStatement(sql);
                ResultSet row = ask.executeQuery()) {
            int columns = row.getMetaData().getColumnCount();
            while (row.next()) {
                Set<String> called = new LinkedHashSet<>();
                for (int at = 3; at <= columns; at++) {
                    called.add(row.getString(at));
                }
                names.add(row.getObject(1, UUID.class), row.getString(2), called);
            }
            return names;
        } catch (SQLException cause) {
            throw new IllegalStateException("the register could not be read", cause);
        }
    }

    /** What stands in these homes today, by the home. */
    public Map<UUID, List<Equipment>> machines(Collection<UUID> homes) {
        Map<UUID, List<Equipment>> machines = new HashMap<>();
        if (!homes.isEmpty()) {
            equipment
                    .ofHomes(homes)
                    .forEach(one -> one.homeId()
                            .ifPresent(home -> machines.computeIfAbsent(home, _ -> new ArrayList<>())
                                    .add(one)));
        }
        return machines;
    }
}
