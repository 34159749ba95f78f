package changeover.web.api;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.People;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Locale;

/** The language that the API speaks to a person: their own, else the business's. */
@ApplicationScoped
class Tongue {

    @Inject
    People people;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    Locale locale() {
        return people.of(current.person())
                .map(member -> Locales.of(member.language()))
                .orElseGet(() -> businesses.current().locale());
    }
}
