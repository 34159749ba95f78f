package changeover.billing;

import changeover.billing.tax.TaxConfirmation;
import changeover.billing.tax.TaxTables;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;

/** Businesses for the tests: each test opens its own, so that none sees another's rows. */
@ApplicationScoped
public class ABusiness {

    private static final AtomicInteger COUNT = new AtomicInteger();

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    AgroalDataSource datasource;

    @Inject
    TaxTables taxes;

    /** In Quebec, working in French, registered for both taxes. */
    public UUID quebec() {
        return open("CA-QC", "fr", "123456789 RT0001", "1234567890 TQ0001", false);
    }

    public UUID open(String place, String language, String gst, String qst, boolean smallSupplier) {
        UUID tenant = UUID.randomUUID();
        String slug =
                "lampe-" + COUNT.incrementAndGet() + "-" + tenant.toString().substring(0, 8);
        current.run(
                tenant,
                CurrentTenant.NOBODY,
                () -> businesses.open(
                        new NewBusiness(
                                slug,
                                "Lampe du Nord",
                                "1, rue du Four, Port-Ambroise",
                                Place.of(place),
                                language,
                                null,
                                null,
                                gst,
                                qst,
                                null,
                                smallSupplier),
                        LocalDate.of(2026, 1, 1)));
        return tenant;
    }

    /** Inside {@link #in}: the owner has read Ontario's rate. */
    public void confirmsOntario() {
        confirms("CA-ON hst 2010-07-01 any any any");
    }

    /** Inside {@link #in}: the owner has read a rate that we know from memory. */
    public void confirms(String row) {
        taxes.confirm(row, new TaxConfirmation.Facts("The agency's page of rates", LocalDate.of(2026, 1, 5), null));
    }

    public <T> T in(UUID tenant, Callable<T> work) {
        return current.run(tenant, CurrentTenant.NOBODY, work);
    }

    public void in(UUID tenant, Runnable work) {
        current.run(tenant, CurrentTenant.NOBODY, work);
    }

    /** Inside {@link #in}: a customer with an address, billed each home apart unless said otherwise. */
    public UUID customer(String name) {
        return customer(name, "fr", "each");
    }

    public UUID customer(String name, String language, String invoices) {
        UUID id = UUID.randomUUID();
        execute(
                "insert into customer (id, key, name, language, street, city, region, postal, country, invoices) values ('"
                        + id + "', '" + id + "', '" + name + "', '" + language
                        + "', '12, rue des Pins', 'Port-Ambroise', 'QC', 'G0A 1A0', 'CA', '" + invoices + "')");
        return id;
    }

    /** Inside {@link #in}: a home in a region, paid for by the customer. */
    public UUID home(UUID payer, String region) {
        return home(payer, "CA", region);
    }

    public UUID home(UUID payer, String country, String region) {
        UUID id = UUID.randomUUID();
        execute("insert into home (id, key, street, city, region, postal, country) values ('" + id + "', '" + id
                + "', '" + COUNT.incrementAndGet() + ", rue du Quai', 'Port-Ambroise', '" + region + "', 'G0A 1A0', '"
                + country + "')");
        execute("insert into home_part (home_id, customer_id, part, from_day) values ('" + id + "', '" + payer
                + "', 'pays', '2020-01-01')");
        return id;
    }

    /** Inside {@link #in}: runs one statement as the application. */
    public int execute(String sql) {
        try (var connection = datasource.getConnection();
                var statement = connection.createStatement()) {
            return statement.executeUpdate(sql);
        } catch (SQLException cause) {
            throw new IllegalStateException(sql, cause);
        }
    }

    /** Inside {@link #in}: the first column of the first row as text. */
    public String one(String sql) {
        try (var connection = datasource.getConnection();
                var statement = connection.createStatement();
                var row = statement.executeQuery(sql)) {
            return row.next() ? row.getString(1) : "none";
        } catch (SQLException cause) {
            throw new IllegalStateException(sql, cause);
        }
    }
}
