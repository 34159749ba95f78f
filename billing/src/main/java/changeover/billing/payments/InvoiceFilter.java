package changeover.billing.payments;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Which documents a list shows.
 *
 * @param standings none for all
 * @param sought what a number or a customer's name says, or null
 * @param skip rows before the page
 * @param limit rows of the page
 */
public record InvoiceFilter(
        Set<Standing> standings,
        @Nullable UUID customerId,
        @Nullable UUID homeId,
        @Nullable UUID agreementId,
        @Nullable UUID visitId,
        @Nullable String sought,
        int skip,
        int limit) {

    private static final int PAGE = 50;

    public InvoiceFilter {
        standings = Set.copyOf(standings);
    }

    public static InvoiceFilter standing(Standing... standings) {
        return new InvoiceFilter(Set.copyOf(List.of(standings)), null, null, null, null, null, 0, PAGE);
    }

    public static InvoiceFilter ofCustomer(UUID customer) {
        return new InvoiceFilter(Set.of(), customer, null, null, null, null, 0, PAGE);
    }

    public static InvoiceFilter ofHome(UUID home) {
        return new InvoiceFilter(Set.of(), null, home, null, null, null, 0, PAGE);
    }

    public static InvoiceFilter ofAgreement(UUID agreement) {
        return new InvoiceFilter(Set.of(), null, null, agreement, null, null, 0, PAGE);
    }

    public static InvoiceFilter ofVisit(UUID visit) {
        return new InvoiceFilter(Set.of(), null, null, null, visit, null, 0, PAGE);
    }

    public InvoiceFilter page(int rowsBefore, int rows) {
        return new InvoiceFilter(standings, customerId, homeId, agreementId, visitId, sought, rowsBefore, rows);
    }

    /** @param words of a number or a customer's name; null looks for none */
    public InvoiceFilter seeking(@Nullable String words) {
        return new InvoiceFilter(standings, customerId, homeId, agreementId, visitId, words, skip, limit);
    }
}
