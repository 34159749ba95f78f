package changeover.billing.notices;

import java.util.Optional;
import java.util.UUID;

/**
 * The customer's own page, on which an estimate is answered. Its address holds a secret, so it is made as the message leaves and kept
 * nowhere.
 */
public interface OwnPage {

    /** A new address for the customer; empty where the installation does not know its own. */
    Optional<String> openedFor(UUID customer);
}
