package changeover.billing.invoices;

import org.jspecify.annotations.Nullable;

/** The business as it stands on a document, copied when it was issued. */
public record Seller(
        String name,
        String street,
        String city,
        String region,
        String postal,
        String country,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String licence,
        @Nullable String gstNumber,
        @Nullable String qstNumber,
        boolean smallSupplier) {}
