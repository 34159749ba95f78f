package changeover.billing.invoices;

import org.jspecify.annotations.Nullable;

/**
 * Who pays, as it stands on a document, copied when it was issued. Parts of the address may be empty.
 *
 * @param taxNumber the payer's own, where they account for a tax themselves
 * @param email where an electronic invoice would go
 */
public record Buyer(
        String name,
        String street,
        String city,
        String region,
        String postal,
        String country,
        @Nullable String taxNumber,
        @Nullable String email) {}
