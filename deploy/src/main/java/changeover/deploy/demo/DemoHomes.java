package changeover.deploy.demo;

import changeover.contracts.ExampleRegister;
import changeover.contracts.Examples;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.PartInHome;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** The shop's homes, entered by the register's own verbs, a transaction each. */
@ApplicationScoped
public class DemoHomes {

    /** A home, who signs for it, and whether it is a place of business. */
    record Entered(UUID id, String signs, boolean commercial) {}

    @Inject
    CurrentTenant current;

    @Inject
    Customers customers;

    @Inject
    Buildings buildings;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    AllEquipment equipment;

    @Inject
    Hazards hazards;

    @Inject
    AccessCodes codes;

    List<Entered> enter(UUID tenant, UUID office, Examples.Shop shop, LocalDate today) {
        var register = new ExampleRegister(customers, buildings, homes, parts, equipment, hazards, codes);
        List<Entered> entered = Examples.homes(shop).stream()
                .map(house -> current.run(
                        tenant,
                        office,
                        () -> new Entered(
                                register.enter(house),
                                house.signs().name(),
                                house.propertyUse().equals("commercial"))))
                .toList();
        entered.stream()
                .filter(Entered::commercial)
                .findFirst()
                .ifPresent(one -> current.run(tenant, office, () -> asksForAReference(one.id(), today)));
        return entered;
    }

    /** Who pays there routes invoices by a reference of their own. */
    private void asksForAReference(UUID home, LocalDate today) {
        UUID payer = parts.customers(List.of(home), PartInHome.PAYS, today).get(home);
        if (payer != null) {
            Customer customer = customers.get(payer).orElseThrow();
            Customer.Facts facts = customer.facts();
            customer.rewrite(
                    new Customer.Facts(
                            facts.name(),
                            facts.language(),
                            facts.phone(),
                            facts.email(),
                            facts.street(),
                            facts.city(),
                            facts.region(),
                            facts.postal(),
                            facts.country(),
                            facts.invoices(),
                            facts.purchaseOrder(),
                            "MAINT-2040",
                            facts.taxNumber(),
                            facts.notes()),
                    new FilledOn(customer.version()));
        }
    }
}
