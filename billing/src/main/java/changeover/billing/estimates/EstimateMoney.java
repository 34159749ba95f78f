package changeover.billing.estimates;

import changeover.billing.payments.Deposit;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The money around an accepted estimate: its deposits, later yeses, and what its visits are about to be charged. */
@ApplicationScoped
public class EstimateMoney {

    private static final String DRAFTS = """
            select i.id, w.visit_id, sum(l.net_minor)::bigint
              from estimate_work w
              join invoice i on i.tenant_id = w.tenant_id and i.visit_id = w.visit_id and i.kind = 'visit'
              join invoice_line l on l.tenant_id = i.tenant_id and l.invoice_id = i.id
             where w.estimate_id = ?
               and not exists (select 1 from invoice_issue s where s.tenant_id = i.tenant_id and s.invoice_id = i.id)
               and not exists (select 1 from invoice_discard x where x.tenant_id = i.tenant_id and x.invoice_id = i.id)
             group by i.id, w.visit_id order by i.id""";

    @Inject
    Estimates estimates;

    @Inject
    Deposits deposits;

    @Inject
    AcceptedWork accepted;

    @Inject
    Today today;

    /**
     * A visit's draft invoice beside what was accepted for it, before taxes.
     *
     * @param left what the yes still leaves for the visit
     */
    public record Charged(UUID invoiceId, UUID visitId, Money asked, Money left) {

        /** By how much the draft goes beyond; empty where it does not. */
        public Optional<Money> beyond() {
            Money most = left.isNegative() ? Money.zero(left.currency()) : left;
            return asked.compareTo(most) > 0 ? Optional.of(asked.minus(most)) : Optional.empty();
        }
    }

    public List<Charged> drafts(Estimate estimate) {
        return estimates.inRows(connection -> {
            List<Charged> found = new ArrayList<>();
            var left = accepted.left(connection, estimate.visits());
            try (PreparedStatement select = connection.prepareStatement(DRAFTS)) {
                select.setObject(1, estimate.id());
                ResultSet row = select.executeQuery();
                while (row.next()) {
                    UUID visit = row.getObject(2, UUID.class);
                    found.add(new Charged(
                            row.getObject(1, UUID.class),
                            visit,
                            new Money(row.getLong(3), estimate.currency()),
                            Objects.requireNonNull(left.get(visit))));
                }
            }
            return found;
        });
    }

    public List<MoreRow> more(Estimate estimate) {
        return estimates.inRows(connection -> {
            List<MoreRow> found = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement("""
                    select accepted_minor, by_name, at, channel, words from estimate_more where estimate_id = ? order by id""")) {
                select.setObject(1, estimate.id());
                ResultSet row = select.executeQuery();
                while (row.next()) {
                    found.add(new MoreRow(
                            new Money(row.getLong(1), estimate.currency()),
                            Objects.requireNonNull(row.getString(2)),
                            row.getObject(3, OffsetDateTime.class).toInstant(),
                            ConsentChannel.of(Objects.requireNonNull(row.getString(4))),
                            Objects.requireNonNull(row.getString(5))));
                }
            }
            return found;
        });
    }

    /** Money kept for the estimate's work, the oldest first. */
    public List<Deposit> deposits(Estimate estimate) {
        List<UUID> ids = estimates.inRows(connection -> {
            List<UUID> found = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select deposit_id from estimate_deposit where estimate_id = ? order by id")) {
                select.setObject(1, estimate.id());
                ResultSet row = select.executeQuery();
                while (row.next()) {
                    found.add(row.getObject(1, UUID.class));
                }
            }
            return found;
        });
        return deposits.those(ids);
    }

    /** What went back may be asked again. */
    private void within(Estimate estimate, Money amount) {
        Money taken = Money.sum(
                deposits(estimate).stream()
                        .map(one -> one.amount().minus(one.back()))
                        .toList(),
                estimate.currency());
        Money most = estimate.acceptedWithTaxes().minus(taken).aboveNought();
        if (amount.compareTo(most) > 0) {
            throw Refusal.of("estimate.deposits-beyond-accepted", Map.of("most", most))
                    .at("amount")
                    .thrown();
        }
    }

    /** Takes money before the work, for an accepted estimate and under its number; whoever does waits for the one before. */
    public UUID take(UUID id, LocalDate day, Way way, Money amount, @Nullable String reference) {
        estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            return id;
        });
        Estimate estimate = estimates
                .find(id)
                .orElseThrow(() -> Refusal.of("estimate.not-found").thrown());
        if (estimate.state(today.day()) != EstimateState.ACCEPTED) {
            throw Refusal.of("estimate.not-accepted").thrown();
        }
        within(estimate, amount);
        String label = estimate.label().orElseThrow();
        UUID deposit = deposits.take(new NewDeposit(
                estimate.customerId(),
                estimate.homeId(),
                null,
                estimate.origin().callId(),
                day,
                way,
                amount,
                reference,
                new Wording("Estimate " + label, "Estimation " + label).in(estimate.language())));
        return estimates.inRows(connection -> {
            try (PreparedStatement insert = connection.prepareStatement(
                    "insert into estimate_deposit (estimate_id, deposit_id) values (?, ?)")) {
                insert.setObject(1, id);
                insert.setObject(2, deposit);
                insert.executeUpdate();
                return deposit;
            }
        });
    }

    /** What was accepted with what its drafts ask beyond it; empty where nothing goes beyond. */
    public Optional<Money> wholeAsked(Estimate estimate) {
        return Optional.ofNullable(estimate.accepted())
                .flatMap(before -> drafts(estimate).stream()
                        .flatMap(draft -> draft.beyond().stream())
                        .reduce(Money::plus)
                        .map(before::plus));
    }
}
