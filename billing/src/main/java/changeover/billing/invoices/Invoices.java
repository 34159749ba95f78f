package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** The documents of the business: as they are printed, issued one by one or many at a time, and drafts rewritten. */
@ApplicationScoped
public class Invoices {

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    InvoiceRows rows;

    @Inject
    Issued issued;

    @Inject
    Judging judging;

    @Inject
    Issuing issuing;

    @Inject
    HeldForWork held;

    /** An issued document by its frozen rows; empty for a draft and for what is not the business's. */
    public Optional<InvoiceView> view(UUID id) {
        return views(List.of(id)).stream().findFirst();
    }

    /** Issued documents, in the order of their numbers. */
    public List<InvoiceView> views(Collection<UUID> ids) {
        return issued.views(ids);
    }

    /**
     * What issuing the draft on the day would print, though its own day may not have come.
     *
     * @throws changeover.contracts.words.Refused when its taxes are not known, or there is no such draft
     */
    public InvoiceView preview(UUID id, LocalDate day) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            Waiting draft = rows.waiting(connection, List.of(id), false).get(id);
            if (draft == null) {
                throw Refusal.of("invoice.not-found").thrown();
            }
            Judged judged = judging.judge(connection, List.of(draft), day, true);
            Refusal refusal = judged.refused().get(id);
            if (refusal != null) {
                throw refusal.thrown();
            }
            Money nought = Money.zero(draft.currency());
            Money paid = PaidBefore.soFar(connection, List.of(id), draft.currency())
                    .getOrDefault(id, nought)
                    .plus(held.of(connection, List.of(id)).getOrDefault(id, nought));
            return Preview.of(Objects.requireNonNull(judged.ready().get(id)), paid);
        } catch (SQLException cause) {
            throw new IllegalStateException("the draft could not be read", cause);
        }
    }

    /**
     * Issues one draft.
     *
     * @throws changeover.contracts.words.Refused with the reason
     */
    public InvoiceIssued.Issued issue(UUID id, LocalDate day) {
        Issuing.Outcome outcome = issue(List.of(id), day);
        Refusal refusal = outcome.refused().get(id);
        if (refusal != null) {
            throw refusal.thrown();
        }
        return outcome.issued().getFirst();
    }

    /** Issues what may be issued of these, in their order, in one transaction. */
    public Issuing.Outcome issue(List<UUID> ids, LocalDate day) {
        return issuing.issue(ids, day, null);
    }

    /** As {@link #issue(List, LocalDate)}, for a run that is kept with what it issued. */
    public Issuing.Outcome issue(List<UUID> ids, LocalDate day, UUID run) {
        return issuing.issue(ids, day, run);
    }

    /** The draft, for its own verbs; empty for an issued document and for a discarded draft. */
    public Optional<Invoice> draft(UUID id) {
        return Optional.ofNullable(session.find(Invoice.class, id)).filter(invoice -> !isSettled(id));
    }

    /** Why there is no such draft: it was issued, or discarded, or it never was the business's. */
    public Refusal notADraft(UUID id) {
        Optional<InvoiceView> view = view(id);
        if (view.isPresent()) {
            String label = Objects.requireNonNull(view.get().label());
            return Refusal.of("invoice.already-issued", Map.of("label", label));
        }
        return Refusal.of(isSettled(id) ? "invoice.discarded" : "invoice.not-found");
    }

    /** Why the drafts may not be issued on the day, by draft; those that may are missing. */
    public Map<UUID, Refusal> refusals(List<UUID> ids, LocalDate day) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return judging.judge(
                            connection, rows.waiting(connection, ids, false).values(), day, false)
                    .refused();
        } catch (SQLException cause) {
            throw new IllegalStateException("the drafts could not be read", cause);
        }
    }

    /** What issuing the drafts on the day would do; nothing is written. */
    public Foreseen foresee(List<UUID> ids, LocalDate day) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            Judged judged = judging.judge(
                    connection, rows.waiting(connection, ids, false).values(), day, false);
            Map<UUID, Money> totals = new LinkedHashMap<>();
            judged.ready().forEach((id, one) -> totals.put(id, one.signedTotal()));
            return new Foreseen(totals, judged.refused());
        } catch (SQLException cause) {
            throw new IllegalStateException("the drafts could not be read", cause);
        }
    }

    /** By how much the draft goes beyond what the customer accepted for its visits; empty where it does not. */
    public Optional<Refusal> beyondAccepted(UUID id) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            Waiting draft = rows.waiting(connection, List.of(id), false).get(id);
            return draft == null ? Optional.empty() : judging.beyondAccepted(connection, draft);
        } catch (SQLException cause) {
            throw new IllegalStateException("the draft could not be read", cause);
        }
    }

    private boolean isSettled(UUID id) {
        return !session.createNativeQuery("select 1 from invoice_issue where invoice_id = :id"
                        + " union all select 1 from invoice_discard where invoice_id = :id")
                .setParameter("id", id)
                .getResultList()
                .isEmpty();
    }
}
