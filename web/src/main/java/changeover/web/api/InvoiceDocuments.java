package changeover.web.api;

import changeover.billing.invoices.Discards;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Standing;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.UUID;

/** Finds a document and says where it stands today. */
@ApplicationScoped
class InvoiceDocuments {

    /** A draft that cannot be reckoned yet. */
    public record Unfinished(UUID id, String state) {}

    @Inject
    Invoices invoices;

    @Inject
    Discards discards;

    @Inject
    Owed owed;

    @Inject
    Today today;

    InvoiceDocument of(UUID id) {
        InvoiceView view = invoices.view(id).orElse(null);
        if (view == null) {
            String state = discards.of(id).isPresent() ? "discarded" : "draft";
            if (state.equals("draft") && invoices.draft(id).isEmpty()) {
                throw new NotFoundException();
            }
            return InvoiceDocument.of(invoices.preview(id, today.day()), state, null);
        }
        OpenItem item = owed.item(id, today.day()).orElse(null);
        if (item == null) {
            return InvoiceDocument.of(view, view.kind().code(), null);
        }
        return InvoiceDocument.of(view, state(item.standing(today.day())), Amount.of(item.open()));
    }

    /** A draft that cannot be reckoned yet, for want of a tax or a number, is read all the same. */
    Object readable(UUID id) {
        try {
            return of(id);
        } catch (Refused notYet) {
            return new Unfinished(id, discards.of(id).isPresent() ? "discarded" : "draft");
        }
    }

    private static String state(Standing standing) {
        return switch (standing) {
            case LATE -> "overdue";
            case GIVEN_UP -> "written-off";
            default -> standing.code();
        };
    }
}
