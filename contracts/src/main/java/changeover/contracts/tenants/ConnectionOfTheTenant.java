package changeover.contracts.tenants;

import io.agroal.api.AgroalPoolInterceptor;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;

/**
 * The second lock: the connection itself learns its business when it is taken from the pool, for one transaction, and
 * the database's row security does the rest.
 */
@ApplicationScoped
class ConnectionOfTheTenant implements AgroalPoolInterceptor {

    @Override
    public void onConnectionAcquire(Connection connection) {
        TenantInForce here = TenantInForce.here();
        try (var set = connection.prepareStatement(
                "select set_config('app.tenant', ?, true), set_config('app.person', ?, true)")) {
            set.setString(1, here == null ? "" : here.tenant().toString());
            set.setString(2, here == null ? "" : here.person().toString());
            set.execute();
        } catch (SQLException cause) {
            throw new IllegalStateException("the connection could not be given its business", cause);
        }
    }
}
