package changeover.billing.invoices;

import changeover.billing.periods.Periods;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Gives drafts their numbers, in the order asked, and freezes what is printed: in one transaction, by a handful of
 * statements however many they are.
 */
@ApplicationScoped
public class Issuing {

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    InvoiceRows rows;

    @Inject
    Joining joining;

    @Inject
    Judging judging;

    @Inject
    NumberSeries series;

    @Inject
    Periods periods;

    @Inject
    Event<InvoiceIssued> issued;

    /**
     * @param issued in the order of their numbers
     * @param refused by draft, with the reason; nothing else was kept from being issued by it
     * @param joined drafts that went into another one, by the draft they went into
     */
    public record Outcome(List<InvoiceIssued.Issued> issued, Map<UUID, Refusal> refused, Map<UUID, UUID> joined) {}

    /**
     * Issues what may be issued on the day, and says why the rest may not.
     *
     * @param run what the documents were issued by together, kept with them; none for a person's own choice
     */
    public Outcome issue(List<UUID> ids, LocalDate day, @Nullable UUID run) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            GrownTables.lookAgain(connection, ids.size());
            Map<UUID, Waiting> drafts = rows.waiting(connection, ids, true);
            Judged judged = judging.judge(connection, drafts.values(), day, false);
            Joining.Joined joined = joining.join(connection, ready(judged), day);
            if (!joined.into().isEmpty()) {
                judged.again(judging.judge(connection, joined.drafts(), day, false));
            }
            ids.stream()
                    .filter(id -> !drafts.containsKey(id))
                    .forEach(id -> judged.refused().put(id, Refusal.of("invoice.not-found")));
            List<InvoiceIssued.Issued> done = freeze(connection, judged, day, run);
            if (!done.isEmpty()) {
                issued.fire(new InvoiceIssued(done));
            }
            return new Outcome(done, judged.refused(), joined.into());
        } catch (SQLException cause) {
            throw new IllegalStateException("the documents could not be issued", cause);
        }
    }

    /** Only what may be issued by itself is joined: a draft that is refused holds up nobody else's. */
    private static List<Waiting> ready(Judged judged) {
        return judged.ready().values().stream().map(Assessed::draft).toList();
    }

    private List<InvoiceIssued.Issued> freeze(Connection connection, Judged judged, LocalDate day, @Nullable UUID run)
            throws SQLException {
        Collection<Assessed> ready = judged.ready().values();
        Map<NumberedKind, SeriesPattern> patterns = new HashMap<>();
        ready.stream()
                .map(one -> one.draft().kind().numbered())
                .distinct()
                .forEach(kind -> patterns.put(kind, series.pattern(kind)));
        Map<String, Counter> counters = locked(connection, patterns, day);
        Optional<Refusal> closed = ready.isEmpty() ? Optional.empty() : periods.refusal(day);
        Rows taxes = PrintedTax.rows();
        Rows issues = IssueRow.rows();
        List<InvoiceIssued.Issued> done = new ArrayList<>(ready.size());
        for (Assessed one : ready) {
            SeriesPattern pattern =
                    Objects.requireNonNull(patterns.get(one.draft().kind().numbered()));
            Counter counter = Objects.requireNonNull(counters.get(pattern.series(day)));
            Optional<Refusal> refusal = closed.or(() -> counter.refusal(day));
            if (refusal.isPresent()) {
                judged.refused().put(one.draft().id(), refusal.get());
                continue;
            }
            IssueRow row = row(one, pattern, counter.next());
            byte[] hash = FrozenText.hash(counter.lastHash(), row, one.draft().lines(), one.taxes());
            row.addTo(issues, counter.lastHash(), hash, run);
            counter.follow(hash);
            one.taxes().forEach(tax -> tax.addTo(taxes));
            done.add(said(one, row));
        }
        taxes.insert(connection);
        issues.insert(connection);
        for (Counter counter : counters.values()) {
            counter.store();
        }
        return done;
    }

    /** Locks in the order of the series' names, so that two runs never wait for each other. */
    private static Map<String, Counter> locked(
            Connection connection, Map<NumberedKind, SeriesPattern> patterns, LocalDate day) throws SQLException {
        Map<String, Counter> counters = new TreeMap<>();
        for (String name : patterns.values().stream()
                .map(pattern -> pattern.series(day))
                .sorted()
                .collect(Collectors.toCollection(LinkedHashSet::new))) {
            counters.put(name, Counter.locked(connection, name));
        }
        return counters;
    }

    private static IssueRow row(Assessed one, SeriesPattern pattern, long number) {
        Waiting draft = one.draft();
        return new IssueRow(
                draft.id(),
                draft.kind().code(),
                draft.customerId(),
                draft.homeId(),
                draft.creditsId(),
                pattern.series(one.day()),
                number,
                pattern.label(one.day(), number),
                one.day(),
                one.taxDay(),
                one.dueDay(),
                draft.language(),
                draft.currency().getCurrencyCode(),
                one.subtotalMinor(),
                one.taxMinor(),
                one.totalMinor(),
                Json.of(one.seller()),
                Json.of(one.buyer()),
                Json.of(one.works()),
                draft.purchaseOrder(),
                draft.reason(),
                BusinessTerms.of(draft, one.taxes()));
    }

    private static InvoiceIssued.Issued said(Assessed one, IssueRow row) {
        return new InvoiceIssued.Issued(
                row.invoiceId(),
                row.customerId(),
                row.homeId(),
                one.draft().kind(),
                row.label(),
                row.day(),
                new Money(row.totalMinor(), one.draft().currency()),
                row.language());
    }
}
