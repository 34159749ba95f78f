package changeover.billing.estimates;

import changeover.contracts.calendar.Window;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An accepted estimate becomes what visits of the home were promised to cost at most; more than that needs a new yes, by the same
 * rule as the first.
 */
@ApplicationScoped
public class EstimateWorks {

    private static final String OPEN = """
            select v.id, v.kind, v.window_from, v.window_until - 1, a.day
              from visit v
              left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
             where (v.home_id = ? or exists (select 1 from home_merge m where m.tenant_id = v.tenant_id and m.other_id = v.home_id
                     and m.home_id = ? and not exists (select 1 from home_merge_undoing u
                       where u.tenant_id = m.tenant_id and u.merge_id = m.id)))
               and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id
                                and e.how <> 'closed')
               and not exists (select 1 from invoice_line l join invoice_issue s
                                 on s.tenant_id = l.tenant_id and s.invoice_id = l.invoice_id
                                where l.tenant_id = v.tenant_id and l.visit_id = v.id)
               and not exists (select 1 from estimate_work w
                                where w.tenant_id = v.tenant_id and w.visit_id = v.id and w.estimate_id = ?)
             order by v.id desc limit 20""";

    @Inject
    Estimates estimates;

    @Inject
    Visits visits;

    @Inject
    SiteConsents consents;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /**
     * A visit that may do the work.
     *
     * @param last of its window, in
     * @param day its day; null while it has none
     */
    public record Candidate(
            UUID id,
            VisitKind kind,
            LocalDate first,
            LocalDate last,
            @Nullable LocalDate day) {}

    /** The visits of its home that may do the work: none that is over without being kept, and none that was invoiced. */
    public List<Candidate> candidates(Estimate estimate) {
        return estimates.inRows(connection -> {
            List<Candidate> found = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(OPEN)) {
                select.setObject(1, estimate.homeId());
                select.setObject(2, estimate.homeId());
                select.setObject(3, estimate.id());
                ResultSet row = select.executeQuery();
                while (row.next()) {
                    found.add(new Candidate(
                            row.getObject(1, UUID.class),
                            VisitKind.ofCode(row.getString(2)),
                            row.getObject(3, LocalDate.class),
                            row.getObject(4, LocalDate.class),
                            row.getObject(5, LocalDate.class)));
                }
            }
            return found;
        });
    }

    /** @throws changeover.contracts.words.Refused before the yes, or for a visit that may not do the work */
    public void bind(UUID id, UUID visit) {
        Estimate estimate = accepted(id);
        if (candidates(estimate).stream().noneMatch(one -> one.id().equals(visit))) {
            throw Refusal.of("estimate.visit-not-open").at("visit").thrown();
        }
        keep(id, visit);
    }

    /** Somebody goes there for it: between today and the last day, with its own minutes. */
    public UUID makeVisit(UUID id, LocalDate last, int minutes) {
        Estimate estimate = accepted(id);
        LocalDate day = today.day();
        if (last.isBefore(day)) {
            throw Refusal.of("call.visit-in-the-past").at("last").thrown();
        }
        Visit made = visits.make(new NewVisit(
                estimate.homeId(),
                null,
                VisitKind.EXTRA,
                Window.ofDays(day, last),
                minutes,
                null,
                estimate.label().orElseThrow() + ": " + estimate.words(),
                List.of()));
        keep(id, made.id());
        return made.id();
    }

    private Estimate accepted(UUID id) {
        Estimate estimate = estimates
                .find(id)
                .orElseThrow(() -> Refusal.of("estimate.not-found").thrown());
        if (estimate.state(today.day()) != EstimateState.ACCEPTED) {
            throw Refusal.of("estimate.not-accepted").thrown();
        }
        return estimate;
    }

    private void keep(UUID id, UUID visit) {
        estimates.inRows(connection -> {
            try (PreparedStatement insert =
                    connection.prepareStatement("insert into estimate_work (estimate_id, visit_id) values (?, ?)")) {
                insert.setObject(1, id);
                insert.setObject(2, visit);
                return insert.executeUpdate();
            }
        });
    }

    /**
     * The customer's yes to more.
     *
     * @param whole the whole amount before taxes from now on, never less than what was accepted before
     * @param said by whom, when and how; always a yes
     */
    public void more(UUID id, Money whole, NewAnswer said) {
        estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            mayBe(accepted(id), whole, said).ifPresent(refusal -> {
                throw refusal.thrown();
            });
            insert(connection, id, whole, said);
            return id;
        });
    }

    private Optional<Refusal> mayBe(Estimate estimate, Money whole, NewAnswer said) {
        Money before = Objects.requireNonNull(estimate.accepted());
        Estimate.Answer first = Objects.requireNonNull(estimate.answer());
        if (whole.compareTo(before) <= 0) {
            return Optional.of(
                    Refusal.of("estimate.no-more", Map.of("accepted", before)).at("amount"));
        }
        if (said.byName().isBlank()) {
            return Optional.of(Refusal.of("text.missing").at("byName"));
        }
        if (said.words() == null || said.words().isBlank()) {
            return Optional.of(Refusal.of("text.missing").at("words"));
        }
        Instant now = today.now();
        if (said.at().isAfter(now)) {
            return Optional.of(Refusal.of("estimate.answer-ahead").at("day"));
        }
        if (said.at().isBefore(first.at())) {
            return Optional.of(Refusal.of("estimate.more-before-yes").at("day"));
        }
        LocalDate day = LocalDate.ofInstant(said.at(), businesses.current().zone());
        return ConsentRules.refusal(
                estimate.place(), said.channel(), day, estimate.origin().askedFor(), consents.all());
    }

    private static void insert(Connection connection, UUID id, Money whole, NewAnswer said) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into estimate_more (estimate_id, accepted_minor, currency, by_name, at, channel, words)
                values (?, ?, ?, ?, ?, ?, ?)""")) {
            insert.setObject(1, id);
            insert.setLong(2, whole.minor());
            insert.setString(3, whole.currency().getCurrencyCode());
            insert.setString(4, said.byName().strip());
            insert.setObject(5, OffsetDateTime.ofInstant(said.at(), ZoneOffset.UTC));
            insert.setString(6, said.channel().code());
            insert.setString(7, said.words());
            insert.executeUpdate();
        }
    }
}
