package changeover.billing.estimates;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An estimate is answered once: yes or no by whoever it was offered to, or taken back by the business. */
@ApplicationScoped
public class Answering {

    @Inject
    Estimates estimates;

    @Inject
    SiteConsents consents;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** @throws changeover.contracts.words.Refused beyond its days, before its offer, or by a way that the place forbids */
    public Estimate answer(UUID id, NewAnswer said) {
        return estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            Estimate estimate = HeadRows.one(connection, id);
            said.refusal(estimate, businesses.current().zone(), today.now(), consents.all())
                    .ifPresent(refusal -> {
                        throw refusal.thrown();
                    });
            insert(
                    connection,
                    id,
                    said.yes() ? "accepted" : "refused",
                    said.byName().strip(),
                    said.at(),
                    said.channel().code(),
                    said.words());
            return HeadRows.one(connection, id);
        });
    }

    /** Why a yes may not be signed where the work is, today; empty where it may. */
    public Optional<Refusal> notOnTheSpot(Estimate estimate) {
        return ConsentRules.refusal(
                estimate.place(),
                ConsentChannel.SITE,
                today.day(),
                estimate.origin().askedFor(),
                consents.all());
    }

    /** A draft that is not wanted any more, or an offer taken back before its answer; it says by whom and why. */
    public Estimate withdraw(UUID id, String byName, String why) {
        if (why.isBlank()) {
            throw Refusal.of("text.missing").at("why").thrown();
        }
        return estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            if (HeadRows.one(connection, id).answer() != null) {
                throw Refusal.of("constraint.an_estimate_is_answered_once").thrown();
            }
            insert(connection, id, "withdrawn", byName, today.now(), null, why.strip());
            return HeadRows.one(connection, id);
        });
    }

    private static void insert(
            Connection connection,
            UUID id,
            String how,
            String byName,
            Instant at,
            @Nullable String channel,
            @Nullable String words)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into estimate_answer (estimate_id, how, by_name, at, channel, words) values (?, ?, ?, ?, ?, ?)""")) {
            insert.setObject(1, id);
            insert.setString(2, how);
            insert.setString(3, byName);
            insert.setObject(4, OffsetDateTime.ofInstant(at, ZoneOffset.UTC));
            insert.setString(5, channel);
            insert.setString(6, words);
            insert.executeUpdate();
        }
    }
}
