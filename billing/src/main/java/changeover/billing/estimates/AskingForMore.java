package changeover.billing.estimates;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The business asks for a yes to more than was accepted, and the customer says yes or no on their own page. Of several questions the
 * newest counts; one that a later yes has reached is over.
 */
@ApplicationScoped
public class AskingForMore {

    private static final String ROWS = """
            select q.id, q.estimate_id, q.asked_minor, q.currency, q.words, q.day, r.by_name, r.at, r.words
              from estimate_asked_more q
              left join estimate_more_refused r on r.tenant_id = q.tenant_id and r.asked_id = q.id
             where\s""";

    @Inject
    Estimates estimates;

    @Inject
    EstimateWorks works;

    @Inject
    Today today;

    @Inject
    Event<MoreAsked> asked;

    /** @param whole the whole amount before taxes from now on, more than what was accepted */
    public UUID ask(UUID id, Money whole, String words) {
        UUID made = estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            Estimate estimate = HeadRows.one(connection, id);
            refusal(estimate, whole, words).ifPresent(refusal -> {
                throw refusal.thrown();
            });
            return insert(connection, id, whole, words.strip());
        });
        asked.fire(new MoreAsked(made, id));
        return made;
    }

    private Optional<Refusal> refusal(Estimate estimate, Money whole, String words) {
        Money accepted = estimate.accepted();
        if (accepted == null) {
            return Optional.of(Refusal.of("estimate.not-accepted"));
        }
        if (whole.compareTo(accepted) <= 0) {
            return Optional.of(
                    Refusal.of("estimate.no-more", Map.of("accepted", accepted)).at("amount"));
        }
        return words.isBlank() ? Optional.of(Refusal.of("text.missing").at("words")) : Optional.empty();
    }

    public Optional<AskedMore> find(UUID askedId) {
        return read("q.id = any (?)", askedId).stream().findFirst();
    }

    /** Every question, the oldest first. */
    public List<AskedMore> all(UUID estimateId) {
        return read("q.estimate_id = any (?) order by q.id", estimateId);
    }

    /** The question that waits for its answer. */
    public Optional<AskedMore> open(Estimate estimate) {
        return Optional.ofNullable(open(List.of(estimate)).get(estimate.id()));
    }

    /** The question of each that waits for its answer, by estimate. */
    public Map<UUID, AskedMore> open(Collection<Estimate> many) {
        Map<UUID, Money> accepted = new HashMap<>();
        for (Estimate one : many) {
            Money whole = one.accepted();
            if (whole != null) {
                accepted.put(one.id(), whole);
            }
        }
        if (accepted.isEmpty()) {
            return Map.of();
        }
        Map<UUID, AskedMore> waiting = new HashMap<>();
        read("q.estimate_id = any (?) order by q.id", accepted.keySet().toArray(UUID[]::new)).stream()
                .collect(Collectors.groupingBy(AskedMore::estimateId))
                .forEach((estimate, all) ->
                        waiting(all, accepted.get(estimate)).ifPresent(one -> waiting.put(estimate, one)));
        return waiting;
    }

    /** @param all the questions of one estimate, the oldest first */
    public static Optional<AskedMore> waiting(List<AskedMore> all, @Nullable Money accepted) {
        return accepted == null || all.isEmpty()
                ? Optional.empty()
                : Optional.of(all.getLast())
                        .filter(one -> one.refused() == null && one.whole().compareTo(accepted) > 0);
    }

    /**
     * The customer's own answer on their page.
     *
     * @param askedId what they read; another question meanwhile is theirs to read first
     */
    public void answer(UUID id, UUID askedId, boolean yes, String byName, @Nullable String words) {
        estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            Estimate estimate = HeadRows.one(connection, id);
            AskedMore waits = open(estimate)
                    .filter(one -> one.id().equals(askedId))
                    .orElseThrow(() -> Refusal.of("estimate.more-not-asked").thrown());
            if (byName.isBlank()) {
                throw Refusal.of("text.missing").at("byName").thrown();
            }
            if (yes) {
                String said = words == null || words.isBlank() ? "" : "\n" + words.strip();
                works.more(
                        id,
                        waits.whole(),
                        new NewAnswer(true, byName, today.now(), ConsentChannel.LINK, waits.words() + said));
            } else {
                refuse(connection, askedId, byName.strip(), words);
            }
            return id;
        });
    }

    private UUID insert(Connection connection, UUID id, Money whole, String words) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into estimate_asked_more (estimate_id, asked_minor, currency, words, day) values (?, ?, ?, ?, ?)
                returning id""")) {
            insert.setObject(1, id);
            insert.setLong(2, whole.minor());
            insert.setString(3, whole.currency().getCurrencyCode());
            insert.setString(4, words);
            insert.setObject(5, today.day());
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        }
    }

    private void refuse(Connection connection, UUID askedId, String byName, @Nullable String words)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(
                "insert into estimate_more_refused (asked_id, by_name, at, words) values (?, ?, ?, ?)")) {
            insert.setObject(1, askedId);
            insert.setString(2, byName);
            insert.setObject(3, OffsetDateTime.ofInstant(today.now(), ZoneOffset.UTC));
            insert.setString(4, words);
            insert.executeUpdate();
        }
    }

    private List<AskedMore> read(String where, UUID... asked) {
        return estimates.inRows(connection -> {
            List<AskedMore> found = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(ROWS + where)) {
                select.setArray(1, connection.createArrayOf("uuid", asked));
                ResultSet row = select.executeQuery();
                while (row.next()) {
                    String refusedBy = row.getString(7);
                    found.add(new AskedMore(
                            row.getObject(1, UUID.class),
                            row.getObject(2, UUID.class),
                            new Money(row.getLong(3), Currency.getInstance(row.getString(4))),
                            Objects.requireNonNull(row.getString(5)),
                            row.getObject(6, LocalDate.class),
                            refusedBy == null
                                    ? null
                                    : new AskedMore.Refused(
                                            refusedBy,
                                            row.getObject(8, OffsetDateTime.class)
                                                    .toInstant(),
                                            row.getString(9))));
                }
            }
            return found;
        });
    }
}
