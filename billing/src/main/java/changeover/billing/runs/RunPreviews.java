package changeover.billing.runs;

import changeover.billing.invoices.Foreseen;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.Standing;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Looks at what a run would do before anybody begins it: the same judgement as issuing, and nothing is written. */
@ApplicationScoped
public class RunPreviews {

    private static final Standing[] WAITING = {Standing.REVIEW, Standing.AWAITING, Standing.UNPRICED};

    @Inject
    InvoiceLists lists;

    @Inject
    Invoices invoices;

    @Inject
    RunDays days;

    @Inject
    Businesses businesses;

    @Inject
    AgroalDataSource database;

    /** @throws changeover.contracts.words.Refused when there can be no run on that day */
    public RunPreview on(LocalDate day) {
        days.check(day);
        List<UUID> ids = new ArrayList<>(lists.ready(day));
        lists.rows(InvoiceFilter.standing(WAITING).page(0, Integer.MAX_VALUE), day).stream()
                .filter(row -> !row.day().isAfter(day))
                .map(InvoiceRow::id)
                .forEach(ids::add);
        Foreseen foreseen = invoices.foresee(ids, day);
        List<RunPreview.Planned> planned = new ArrayList<>();
        List<RunPreview.Odd> refused = new ArrayList<>();
        for (Foreseeable draft : drafts(ids)) {
            Refusal why = foreseen.refused().get(draft.id());
            Money amount = foreseen.totals().get(draft.id());
            if (why != null) {
                refused.add(new RunPreview.Odd(draft.id(), draft.customerId(), draft.customer(), why));
            } else if (amount != null) {
                planned.add(new RunPreview.Planned(draft, amount));
            }
        }
        InvoiceLists.Sum nothing =
                lists.sums(day, businesses.current().currency()).get(Standing.NOTHING);
        return new RunPreview(day, planned, refused, nothing == null ? 0 : nothing.documents());
    }

    private List<Foreseeable> drafts(List<UUID> ids) {
        try (var connection = database.getConnection()) {
            return ForeseeableRows.of(connection, ids);
        } catch (SQLException cause) {
            throw new IllegalStateException("the drafts could not be read", cause);
        }
    }
}
