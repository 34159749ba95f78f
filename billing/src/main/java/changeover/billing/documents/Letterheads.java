package changeover.billing.documents;

import changeover.billing.invoices.Seller;
import changeover.contracts.pictures.Picture;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/** The letterhead of the current business, as it is today or as it was frozen on a document; the sign is today's. */
@ApplicationScoped
public class Letterheads {

    private static final Logger LOG = Logger.getLogger(Letterheads.class);

    @Inject
    Businesses businesses;

    public Letterhead current(Words words) {
        Business business = businesses.current();
        BusinessProfile.Facts facts = businesses.profile().facts();
        List<String> address = Places.lines(words, null, facts.street(), facts.city(), facts.region(), facts.postal());
        return new Letterhead(business.name(), address, facts.phone(), facts.email(), facts.licence(), logo());
    }

    Letterhead of(Seller seller, Words words, @Nullable Picture logo) {
        List<String> address =
                Places.lines(words, null, seller.street(), seller.city(), seller.region(), seller.postal());
        return new Letterhead(seller.name(), address, seller.phone(), seller.email(), seller.licence(), logo);
    }

    @Nullable
    Picture logo() {
        byte[] kept = businesses.profile().logo().orElse(null);
        if (kept == null) {
            return null;
        }
        try {
            return Picture.kept(kept);
        } catch (IllegalArgumentException notOurs) {
            LOG.warn("the business's sign is no JPEG of ours and is left out");
            return null;
        }
    }
}
