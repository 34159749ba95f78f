package changeover.billing.estimates;

import java.util.UUID;

/** A customer was asked for a yes to more than they accepted. */
public record MoreAsked(UUID askedId, UUID estimateId) {}
