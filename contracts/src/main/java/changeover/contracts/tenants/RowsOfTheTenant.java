package changeover.contracts.tenants;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import io.quarkus.hibernate.orm.runtime.tenant.TenantResolver;
import jakarta.enterprise.context.RequestScoped;

/** The first lock: Hibernate writes the business into every statement. */
@PersistenceUnitExtension
@RequestScoped
class RowsOfTheTenant implements TenantResolver {

    /** A business that cannot exist, so that work without one finds nothing. */
    private static final String NONE = "00000000-0000-0000-0000-000000000000";

    @Override
    public String getDefaultTenantId() {
        return NONE;
    }

    @Override
    public String resolveTenantId() {
        TenantInForce here = TenantInForce.here();
        return here == null ? NONE : here.tenant().toString();
    }
}
