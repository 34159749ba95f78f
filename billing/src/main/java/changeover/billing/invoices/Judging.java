package changeover.billing.invoices;

import changeover.contracts.words.Refusal;
import changeover.scheduling.reviews.Reviews;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Computes what issuing each draft on a day would print, from rows read for all of them at once. */
@ApplicationScoped
class Judging {

    @Inject
    InvoiceRows rows;

    @Inject
    TaxFacts facts;

    @Inject
    FirstPaid firstPaid;

    @Inject
    PromisedAmounts promised;

    @Inject
    Reviews reviews;

    /** @param early whether the day may be before the draft's own: a preview shows what will be */
    Judged judge(Connection connection, Collection<Waiting> drafts, LocalDate day, boolean early) throws SQLException {
        Assessment assessment = facts.on(day);
        Map<UUID, Place> places = rows.places(connection, homes(drafts));
        Map<UUID, LocalDate> paid =
                firstPaid.days(drafts.stream().map(Waiting::id).toList());
        Map<UUID, CreditTaxes> credits = credits(connection, drafts);
        BeyondPromise beyond = early ? new BeyondPromise(Map.of()) : beyond(connection, drafts);
        Set<UUID> held = early
                ? Set.of()
                : reviews.heldAmong(drafts.stream().flatMap(Judging::visits).toList());
        Judged judged = new Judged();
        for (Waiting draft : drafts) {
            Optional<Refusal> refusal = early
                    ? Optional.empty()
                    : assessment.refusal(draft).or(() -> waits(draft, held)).or(() -> beyond.refusal(draft));
            if (refusal.isPresent()) {
                judged.refused().put(draft.id(), refusal.get());
                continue;
            }
            LocalDate paidDay = paid.getOrDefault(draft.id(), day);
            LocalDate taxDay = paidDay.isBefore(day) ? paidDay : day;
            Assessment.Taxes taxes = draft.kind() == DocumentKind.CREDIT
                    ? creditTaxes(draft, credits.get(draft.creditsId()))
                    : assessment.taxes(draft, places, taxDay);
            Refusal taxRefusal = taxes.refusal() == null && !early ? taxes.unconfirmed() : taxes.refusal();
            if (taxRefusal != null) {
                judged.refused().put(draft.id(), taxRefusal);
                continue;
            }
            List<WorkPlace> works = Assessment.works(draft, places);
            var assessed = new Assessed(
                    draft, day, taxDay, assessment.seller(), Assessment.buyer(draft, works), works, taxes.rows());
            if (!early && assessed.totalMinor() > Most.MINOR) {
                judged.refused().put(draft.id(), Refusal.of("invoice.too-much"));
                continue;
            }
            judged.ready().put(draft.id(), assessed);
            if (draft.creditsId() != null) {
                credits.computeIfPresent(draft.creditsId(), (_, credit) -> credit.after(draft, taxes.rows()));
            }
        }
        return judged;
    }

    /** What a visit charges leaves after somebody has looked its closure over. */
    private static Optional<Refusal> waits(Waiting draft, Set<UUID> held) {
        return visits(draft).anyMatch(held::contains)
                ? Optional.of(Refusal.of("invoice.waits-for-review"))
                : Optional.empty();
    }

    private static Stream<UUID> visits(Waiting draft) {
        return draft.kind() == DocumentKind.CREDIT
                ? Stream.empty()
                : Stream.concat(
                                Stream.ofNullable(draft.visitId()),
                                draft.lines().stream().map(LineRow::visitId))
                        .filter(Objects::nonNull);
    }

    Optional<Refusal> beyondAccepted(Connection connection, Waiting draft) throws SQLException {
        return beyond(connection, List.of(draft)).refusal(draft);
    }

    private BeyondPromise beyond(Connection connection, Collection<Waiting> drafts) throws SQLException {
        return new BeyondPromise(promised.left(connection, BeyondPromise.visits(drafts)));
    }

    private static Assessment.Taxes creditTaxes(Waiting draft, @Nullable CreditTaxes credit) {
        if (credit == null) {
            return new Assessment.Taxes(List.of(), Refusal.of("credit.not-issued"));
        }
        Refusal refusal = credit.refusal(draft.lines());
        return refusal != null
                ? new Assessment.Taxes(List.of(), refusal)
                : new Assessment.Taxes(credit.of(draft), null);
    }

    private static Set<UUID> homes(Collection<Waiting> drafts) {
        Set<UUID> homes = new HashSet<>();
        drafts.forEach(draft -> draft.lines().forEach(line -> {
            if (line.homeId() != null) {
                homes.add(line.homeId());
            }
        }));
        return homes;
    }

    /** By the invoice corrected, which is locked: two credit notes of one invoice are issued one after the other. */
    private Map<UUID, CreditTaxes> credits(Connection connection, Collection<Waiting> drafts) throws SQLException {
        Set<UUID> corrected = new TreeSet<>();
        drafts.forEach(draft -> {
            if (draft.creditsId() != null) {
                corrected.add(draft.creditsId());
            }
        });
        Map<UUID, CreditTaxes> credits = new HashMap<>();
        for (UUID invoice : corrected) {
            CreditTaxes credit = credit(connection, invoice);
            if (credit != null) {
                credits.put(invoice, credit);
            }
        }
        return credits;
    }

    /** What was charged and what is credited already; null for a draft and for a credit note. */
    @Nullable
    CreditTaxes credit(Connection connection, UUID invoice) throws SQLException {
        if (!issuedAndLocked(connection, invoice)) {
            return null;
        }
        List<UUID> before = creditsOf(connection, invoice);
        return new CreditTaxes(
                rows.lines(connection, List.of(invoice)),
                rows.taxes(connection, List.of(invoice)),
                rows.lines(connection, before),
                rows.taxes(connection, before));
    }

    private static boolean issuedAndLocked(Connection connection, UUID invoice) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement("""
                select 1 from invoice i join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
                 where i.id = ? and i.kind <> 'credit' for update of i""")) {
            lock.setObject(1, invoice);
            return lock.executeQuery().next();
        }
    }

    private static List<UUID> creditsOf(Connection connection, UUID invoice) throws SQLException {
        List<UUID> ids = new ArrayList<>();
        try (PreparedStatement select =
                connection.prepareStatement("select invoice_id from invoice_issue where credits_id = ?")) {
            select.setObject(1, invoice);
            var row = select.executeQuery();
            while (row.next()) {
                ids.add(row.getObject(1, UUID.class));
            }
        }
        return ids;
    }
}
