package changeover.contracts.tenants;

import org.jspecify.annotations.Nullable;

/**
 * What must be known before a business opens its door.
 *
 * @param slug the name in the address: small letters, digits and hyphens
 * @param address one line, as its paper says it: street, city, postal code
 */
public record NewBusiness(
        String slug,
        String name,
        String address,
        Place place,
        String language,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String gstNumber,
        @Nullable String qstNumber,
        @Nullable String licence,
        boolean smallSupplier) {}
