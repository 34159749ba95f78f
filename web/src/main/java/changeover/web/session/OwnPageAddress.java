package changeover.web.session;

import changeover.billing.notices.OwnPage;
import changeover.contracts.tenants.Businesses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** A new link of the customer under the address by which browsers reach us; without that address mail carries none. */
@ApplicationScoped
class OwnPageAddress implements OwnPage {

    @Inject
    CustomerLinks links;

    @Inject
    Businesses businesses;

    @ConfigProperty(name = "changeover.url")
    Optional<String> url = Optional.empty();

    @Override
    public Optional<String> openedFor(UUID customer) {
        return url.map(base ->
                base.replaceFirst("/+$", "") + "/" + businesses.current().slug() + "/yours/" + links.make(customer));
    }
}
