package changeover.contracts.customers;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A home in a list: enough to know it by.
 *
 * @param customer who lives there today, else who signs, else nobody
 * @param units how many machines stand there
 */
public record FoundHome(
        UUID id,
        String key,
        String street,
        @Nullable String unitLabel,
        String city,
        @Nullable UUID customerId,
        @Nullable String customer,
        @Nullable String phone,
        int units,
        boolean toBeRead) {}
