package changeover.billing.ledger;

import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Discards;
import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftChange;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.invoices.Invoices;
import changeover.billing.tax.TaxQuestion;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Ending;
import changeover.contracts.agreements.EndingCause;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Agreements that end in mid-term are settled by credit notes and fallen instalments, after both ways were looked at. */
@ApplicationScoped
public class Settlements {

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    @Inject
    Agreements agreements;

    @Inject
    Homes homes;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Discards discards;

    @Inject
    DraftsByHand drafts;

    /** As below, asked about no reason. */
    public Optional<Settlement> of(UUID agreement, LocalDate asked) {
        return of(agreement, asked, null);
    }

    /**
     * On the day it ended and for its reason, or, while it holds, as if it ended on the day asked for the reason asked; empty where
     * nothing was ever sold.
     *
     * @param why null where none is asked about
     */
    public Optional<Settlement> of(UUID agreement, LocalDate asked, @Nullable EndingCause why) {
        Currency currency = businesses.current().currency();
        Optional<Ending> ending = agreements.ending(agreement);
        LocalDate day = ending.map(Ending::day).orElse(asked);
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            Optional<SoldPlan> sold = SoldPlanRows.one(connection, agreement, currency);
            if (sold.isEmpty()) {
                return Optional.empty();
            }
            SettlementRows rows = new SettlementRows(connection, invoices, currency);
            String place = homes.get(sold.get().head().homeId())
                    .map(home -> TaxQuestion.region(home.country(), home.region()))
                    .orElse("");
            EndingCause cause = ending.isPresent() ? ending.get().cause().orElse(null) : why;
            long since = ChronoUnit.DAYS.between(rows.yes(agreement, day), day);
            return Optional.of(Settlement.of(
                    agreement,
                    ending.isPresent(),
                    RefundPolicy.of(place, cause == null ? "" : cause.code(), since),
                    sold.get().endingOn(day, currency),
                    rows.billed(agreement),
                    rows.waiting(agreement),
                    sold.get().settledOn(LocalDate.MAX).orElse(null)));
        } catch (SQLException cause) {
            throw new IllegalStateException("the agreement could not be settled", cause);
        }
    }

    /**
     * Writes the drafts of the credit notes, one an invoice, and what is kept; instalments that were not issued fall as far as
     * they would ask for more than is kept.
     *
     * @throws changeover.contracts.words.Refused while the agreement holds, while a credit note of its invoices is a draft, or
     *     when nothing is to give back, none falls and as much was kept before
     */
    public List<UUID> settle(UUID agreement, RefundWay way, LocalDate today, String why) {
        wait(agreement);
        Settlement settlement = of(agreement, today)
                .orElseThrow(() -> Refusal.of("settlement.nothing").thrown());
        if (!settlement.ended()) {
            throw Refusal.of("settlement.not-ended").thrown();
        }
        Settlement.Way chosen = settlement.ways().stream()
                .filter(one -> one.way() == way)
                .findFirst()
                .orElseThrow();
        Map<UUID, Money> stay = chosen.stay(settlement.waiting());
        List<Settlement.Waiting> change = settlement.waiting().stream()
                .filter(one -> !one.net().equals(stay.get(one.id())))
                .toList();
        Settlement.Settled settled = chosen.settled(today, settlement.billed(), settlement.waiting());
        Settlement.Settled before = settlement.settled();
        boolean asBefore = before != null && before.kept().equals(settled.kept());
        if (chosen.parts().isEmpty() && change.isEmpty() && asBefore) {
            throw Refusal.of("settlement.nothing").thrown();
        }
        if (drafted(agreement)) {
            throw Refusal.of("settlement.drafted").thrown();
        }
        keep(agreement, settled, way, why);
        List<UUID> notes = new ArrayList<>();
        for (Settlement.Part part : chosen.parts()) {
            notes.add(credits.inPart(part.invoiceId(), today, part.lines(), new Wording(why, why)));
        }
        for (Settlement.Waiting one : change) {
            Money asks = Objects.requireNonNull(stay.get(one.id()));
            if (asks.isPositive()) {
                lessen(one, asks, today, why);
            } else {
                invoices.draft(one.id())
                        .ifPresent(draft -> discards.discard(one.id(), new FilledOn(draft.version()), today, why));
            }
        }
        return List.copyOf(notes);
    }

    private void keep(UUID agreement, Settlement.Settled settled, RefundWay way, String why) {
        try (Connection connection = datasource.getConnection()) {
            SettlementRows.kept(connection, agreement, settled, way, why);
        } catch (SQLException cause) {
            throw new IllegalStateException("what is kept could not be written down", cause);
        }
    }

    /** The first lines stay while they come to no more than the draft still asks for; the next one asks for the rest. */
    private void lessen(Settlement.Waiting one, Money asks, LocalDate today, String why) {
        DraftByHand draft = drafts.of(one.id()).orElseThrow();
        List<DraftChange.Kept> kept = new ArrayList<>();
        Money left = asks;
        for (DraftByHand.Line line : draft.lines()) {
            Money price = line.unitPrice();
            Money net = price == null ? left.minus(left) : price.times(line.quantity());
            boolean whole = net.compareTo(left) <= 0;
            if (whole || left.isPositive()) {
                kept.add(new DraftChange.Kept(
                        line.position(), null, whole ? null : BigDecimal.ONE, whole ? null : left, "way"));
                left = whole ? left.minus(net) : Money.zero(left.currency());
            }
        }
        drafts.change(one.id(), new FilledOn(draft.version()), new DraftChange(kept, List.of(), null));
        try (Connection connection = datasource.getConnection()) {
            SettlementRows.lessened(connection, one.id(), one.net().minus(asks), today, why);
        } catch (SQLException cause) {
            throw new IllegalStateException("the instalment could not be lessened", cause);
        }
    }

    /** Two people settle one after the other. */
    private void wait(UUID agreement) {
        session.createNativeQuery("select 1 from pg_advisory_xact_lock(hashtextextended('settle ' || :agreement, 0))")
                .setParameter("agreement", agreement.toString())
                .getSingleResult();
    }

    /** What waits to be issued is not credited yet, and would be given back once more. */
    private boolean drafted(UUID agreement) {
        return (boolean) session.createNativeQuery("""
                        select exists (
                          select 1 from invoice n
                           where n.kind = 'credit'
                             and not exists (select 1 from invoice_issue s where s.invoice_id = n.id)
                             and not exists (select 1 from invoice_discard x where x.invoice_id = n.id)
                             and exists (select 1 from invoice_line l
                                          where l.invoice_id = n.credits_id and l.agreement_id = :agreement
                                            and l.kind = 'plan'))""")
                .setParameter("agreement", agreement)
                .getSingleResult();
    }
}
