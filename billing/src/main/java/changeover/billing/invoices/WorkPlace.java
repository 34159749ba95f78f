package changeover.billing.invoices;

import java.util.UUID;

/** Where the work was done, copied when the document was issued: the address that decides the taxes. */
public record WorkPlace(
        UUID homeId, String unit, String street, String city, String region, String postal, String country) {}
