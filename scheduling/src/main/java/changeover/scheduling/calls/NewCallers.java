package changeover.scheduling.calls;

import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Somebody whom nobody knows rings: who they are and where they live is enough to go there. They take every part of the home
 * until the office hears otherwise, and its machines are read at the first visit.
 */
@ApplicationScoped
public class NewCallers {

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /**
     * What is typed while they talk.
     *
     * @param language en or fr
     */
    public record NewCaller(
            String name,
            @Nullable String phone,
            String language,
            String street,
            String city,
            @Nullable String postal) {}

    /** A new customer and a new home in the business's own province or state; the home's id. */
    public UUID enter(NewCaller caller) {
        Business business = businesses.current();
        Home home = homes.add(new Home.Facts(
                null,
                null,
                caller.street(),
                caller.city(),
                business.region(),
                caller.postal(),
                business.country(),
                null,
                null,
                "residential",
                null,
                null,
                true));
        Customer customer = customers.add(Customer.Facts.of(caller.name(), caller.language(), caller.phone(), null));
        parts.beginAll(home.id(), customer.id(), today.day());
        return home.id();
    }
}
