package changeover.contracts.merging;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Two homes are made one: machines, dangers, keys, agreements, times it is shut and what is still to come move to the one that lives on;
 * what happened stays where it happened and is reached from both. For a day it can be undone.
 */
@ApplicationScoped
public class HomeMerges {

    /** So long a merge may be undone. */
    static final Duration UNDONE_WITHIN = Duration.ofDays(1);

    @Inject
    EntityManager rows;

    @Inject
    CurrentTenant current;

    @Inject
    Homes homes;

    @Inject
    Moves moves;

    @Inject
    Today today;

    @Inject
    Event<HomesMerged> merged;

    @Inject
    Event<MergeUndone> undone;

    /**
     * A merge that stands.
     *
     * @param homeId which lives on
     */
    public record Merge(UUID id, UUID homeId, String home, UUID otherId, String other, Instant at) {

        public Instant undoableUntil() {
            return at.plus(UNDONE_WITHIN);
        }

        public boolean isUndoable(Instant now) {
            return now.isBefore(undoableUntil());
        }
    }

    /** Makes one of two; answers the merge. */
    public UUID merge(UUID homeId, UUID otherId) {
        standInLine();
        Home home = found(homeId);
        Home other = found(otherId);
        if (homeId.equals(otherId)) {
            throw Refusal.of("merge.same").thrown();
        }
        if (!home.country().equals(other.country()) || !home.region().equals(other.region())) {
            throw Refusal.of("merge.regions").thrown();
        }
        boolean away = of(homeId).stream().anyMatch(merge -> merge.otherId().equals(homeId));
        if (away || !of(otherId).isEmpty()) {
            throw Refusal.of("merge.already").thrown();
        }
        UUID id = Ids.next();
        rows.flush();
        rows.createNativeQuery("insert into home_merge (id, home_id, other_id) values (:id, :home, :other)")
                .setParameter("id", id)
                .setParameter("home", homeId)
                .setParameter("other", otherId)
                .executeUpdate();
        LocalDate day = today.day();
        moves.along(
                id,
                homeId,
                otherId,
                "agreement",
                "t.term_until > date '" + day + "' and not exists ("
                        + "select from agreement_ending e where e.tenant_id = t.tenant_id and e.agreement_id = t.id)");
        moves.along(id, homeId, otherId, "hazard", "t.cleared_on is null");
        moves.along(id, homeId, otherId, "equipment", "name", "t.ended_on is null");
        moves.along(id, homeId, otherId, "access_code", "label", "true");
        moves.along(
                id,
                homeId,
                otherId,
                "home_shut",
                "(t.until_day is null or t.until_day > date '" + day + "') and not exists ("
                        + "select from home_opening o where o.tenant_id = t.tenant_id and o.shut_id = t.id"
                        + " and o.day <= date '" + day + "')");
        moves.along(id, homeId, otherId, "home_handover", "t.day > date '" + day + "'");
        merged.fire(new HomesMerged(id, homeId, otherId, day));
        rows.clear();
        return id;
    }

    /** Exactly what came along goes back. */
    public void undo(UUID id) {
        standInLine();
        Merge merge = standing("and m.id = :id", Set.of(id)).stream()
                .findFirst()
                .orElseThrow(() -> Refusal.of("merge.unknown").thrown());
        if (!merge.isUndoable(today.now())) {
            throw Refusal.of("merge.too-late").thrown();
        }
        rows.flush();
        rows.createNativeQuery("insert into home_merge_undoing (merge_id) values (:merge)")
                .setParameter("merge", id)
                .executeUpdate();
        moves.back(id, merge.homeId(), merge.otherId(), "agreement");
        undone.fire(new MergeUndone(id, merge.homeId(), merge.otherId()));
        moves.back(id, merge.homeId(), merge.otherId(), "hazard");
        moves.back(id, merge.homeId(), merge.otherId(), "equipment", "name");
        moves.back(id, merge.homeId(), merge.otherId(), "access_code", "label");
        moves.back(id, merge.homeId(), merge.otherId(), "home_shut");
        moves.back(id, merge.homeId(), merge.otherId(), "home_handover");
        rows.clear();
    }

    /** Those that stand, the latest first. */
    public List<Merge> all() {
        return standing("", Set.of());
    }

    /** Those in which a home lives on or went into another. */
    public List<Merge> of(UUID home) {
        return standing("and (m.home_id = :id or m.other_id = :id)", Set.of(home));
    }

    /** The home that a home lives on as: itself, or the one it went into. */
    @SuppressWarnings("unchecked")
    public UUID living(UUID home) {
        List<UUID> into = rows.createNativeQuery("""
                        select m.home_id from home_merge m
                         where m.tenant_id = current_tenant() and m.other_id = :home and not exists (
                           select from home_merge_undoing u where u.tenant_id = m.tenant_id and u.merge_id = m.id)
                        """, UUID.class)
                .setParameter("home", home)
                .getResultList();
        return into.isEmpty() ? home : into.getFirst();
    }

    /** Two that look like one are two. */
    public void keepApart(UUID one, UUID other) {
        found(one);
        found(other);
        if (one.equals(other)) {
            throw Refusal.of("merge.one-and-the-same").thrown();
        }
        boolean inOrder = one.compareTo(other) <= 0;
        rows.createNativeQuery("insert into homes_apart (home_id, other_id) values (:one, :other)"
                        + " on conflict on constraint two_homes_stay_two do nothing")
                .setParameter("one", inOrder ? one : other)
                .setParameter("other", inOrder ? other : one)
                .executeUpdate();
    }

    private Home found(UUID id) {
        return Optional.ofNullable(rows.find(Home.class, id))
                .orElseThrow(() -> Refusal.of("agreement.home-unknown").thrown());
    }

    private List<Merge> standing(String which, Set<UUID> ids) {
        var ask = rows.createNativeQuery("""
                select m.id, m.home_id, concat_ws(', ', h.street, h.unit_label, h.city), m.other_id,
                       concat_ws(', ', o.street, o.unit_label, o.city), m.made_at
                  from home_merge m
                  join home h on h.tenant_id = m.tenant_id and h.id = m.home_id
                  join home o on o.tenant_id = m.tenant_id and o.id = m.other_id
                 where m.tenant_id = current_tenant() and not exists (select from home_merge_undoing u
                         where u.tenant_id = m.tenant_id and u.merge_id = m.id) %s
                 order by m.made_at desc, m.id""".formatted(which), Tuple.class);
        ids.forEach(id -> ask.setParameter("id", id));
        return ask.getResultStream().map(row -> merge((Tuple) row)).toList();
    }

    private static Merge merge(Tuple row) {
        return new Merge(
                row.get(0, UUID.class),
                row.get(1, UUID.class),
                row.get(2, String.class),
                row.get(3, UUID.class),
                row.get(4, String.class),
                row.get(5, Instant.class));
    }

    /** One merge after the other, so that no home goes two ways at once. */
    private void standInLine() {
        rows.createNativeQuery("select 1 from pg_advisory_xact_lock(hashtextextended(:of, 79))")
                .setParameter("of", "home merges " + current.id())
                .getSingleResult();
    }
}
