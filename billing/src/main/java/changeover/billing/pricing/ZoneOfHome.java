package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import org.jspecify.annotations.Nullable;

/**
 * The zone of a home on a day, and how it was found.
 *
 * @param zone null where none of the business's zones is for the home
 */
public record ZoneOfHome(@Nullable TravelZone zone, Wording how) {}
