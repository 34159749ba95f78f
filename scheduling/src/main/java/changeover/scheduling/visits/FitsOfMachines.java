package changeover.scheduling.visits;

import changeover.contracts.catalogue.CatalogueJson;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** What fits each of some machines, as its card says. */
final class FitsOfMachines {

    private FitsOfMachines() {}

    @SuppressWarnings("unchecked")
    static Map<UUID, Map<String, String>> of(Connection connection, Collection<UUID> machines) throws SQLException {
        Map<UUID, Map<String, String>> fits = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select id, fits::text from equipment where tenant_id = current_tenant() and id = any (?)""")) {
            select.setArray(1, connection.createArrayOf("uuid", machines.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                fits.put(row.getObject(1, UUID.class), CatalogueJson.read(row.getString(2), Map.class));
            }
        }
        return fits;
    }
}
