package changeover.billing.invoices;

/** Who pays, as it stands on a document, copied when it was issued. Parts of the address may be empty. */
public record Buyer(String name, String street, String city, String region, String postal, String country) {}
