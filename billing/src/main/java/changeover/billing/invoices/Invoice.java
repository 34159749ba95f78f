package changeover.billing.invoices;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A draft: until it is issued its order number, its terms and its day may still be rewritten. */
@Entity
@Table(name = "invoice")
public class Invoice extends Owned {

    private static final int LONGEST_ORDER = 60;
    private static final int YEAR = 365;

    private String kind = "";

    @Column(name = "customer_id")
    private @Nullable UUID customerId;

    @Column(name = "home_id")
    private @Nullable UUID homeId;

    @Column(name = "may_issue_from")
    private @Nullable LocalDate mayIssueFrom;

    @Column(name = "awaits_first_visit")
    private boolean awaitsFirstVisit;

    @Column(name = "purchase_order")
    private @Nullable String purchaseOrder;

    @Column(name = "due_days")
    private int dueDays;

    @Version
    private int version;

    /** @throws changeover.contracts.words.Refused when the number is too long */
    public void orderedUnder(@Nullable String number) {
        if (number != null && number.length() > LONGEST_ORDER) {
            throw Refusal.of("invoice.purchase-order-long").at("purchaseOrder").thrown();
        }
        purchaseOrder = number == null || number.isBlank() ? null : number.strip();
    }

    /** @throws changeover.contracts.words.Refused outside 0 to 365 */
    public void dueIn(int days) {
        if (days < 0 || days > YEAR) {
            throw Refusal.of("invoice.due-days").at("dueDays").thrown();
        }
        dueDays = days;
    }

    /** May be asked for from another day on; the first visit is still waited for where the law asks it. */
    public void issueFrom(LocalDate day) {
        mayIssueFrom = day;
    }

    public DocumentKind kind() {
        return DocumentKind.of(kind);
    }

    public @Nullable UUID customerId() {
        return customerId;
    }

    @Nullable
    UUID homeId() {
        return homeId;
    }

    public @Nullable LocalDate mayIssueFrom() {
        return mayIssueFrom;
    }

    public boolean awaitsFirstVisit() {
        return awaitsFirstVisit;
    }

    public @Nullable String purchaseOrder() {
        return purchaseOrder;
    }

    public int dueDays() {
        return dueDays;
    }

    public int version() {
        return version;
    }
}
