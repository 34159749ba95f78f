package changeover.contracts.customers;

import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The register of keys and codes: what there is may be listed, what it says is read only with a reason, and every
 * reading is kept with the person and the hour. Who may ask on which day, the caller decides.
 */
@ApplicationScoped
public class AccessCodes {

    @Inject
    EntityManager rows;

    @Inject
    Secrets secrets;

    /** That there is a key or a code, without what it says. */
    public record Listed(UUID id, String kind, String label) {}

    /** A key or a code in the clear. Never stored, never logged. */
    public record Shown(UUID id, String kind, String label, String secret) {

        @Override
        public String toString() {
            return "Shown[" + kind + " " + label + "]";
        }
    }

    /** Who read the codes of a home. */
    public record Reading(UUID personId, Instant at, String reason, int codes) {}

    /**
     * Keeps a key or a code.
     *
     * @param kind key, code or alarm
     * @param label which door or box; one of a label and a kind in a home
     */
    public UUID add(UUID homeId, String kind, @Nullable String label, String secret) {
        var checks = new Checks();
        String said = checks.oneOf("kind", kind, AccessCode.KINDS);
        String named = checks.optionalLine("label", label);
        String hidden = checks.optional("secret", secret, Checks.LINE);
        checks.refuseIf(hidden == null, "secret", "text.missing");
        checks.refuseIf(named != null && named.contains("="), "label", "access.label");
        checks.orRefuse();
        AccessCode code = AccessCode.of(
                homeId,
                said,
                named == null ? "" : named,
                secrets.hide(homeId, hidden == null ? "" : hidden),
                of(homeId).size() + 1);
        rows.persist(code);
        rows.flush();
        return code.id();
    }

    /** Forgets a key or a code; false when there is none of that id here. */
    public boolean remove(UUID id) {
        AccessCode found = rows.find(AccessCode.class, id);
        if (found == null) {
            return false;
        }
        rows.remove(found);
        rows.flush();
        return true;
    }

    /** A key or a code that is in our hands no more: to whom it went back, and when. */
    public record GivenBack(String kind, String label, String to, LocalDate day) {}

    /** A key goes back, or a code is handed over: it is kept here no longer. False when there is none of that id in the home. */
    public boolean giveBack(UUID homeId, UUID id, String to, LocalDate day) {
        AccessCode found = rows.find(AccessCode.class, id);
        if (found == null || !found.homeId().equals(homeId)) {
            return false;
        }
        var checks = new Checks();
        String who = checks.line("to", to);
        checks.orRefuse();
        rows.createNativeQuery("insert into key_return (home_id, kind, label, given_to, day)"
                        + " values (:home, :kind, :label, :to, :day)")
                .setParameter("home", homeId)
                .setParameter("kind", found.kind())
                .setParameter("label", found.label())
                .setParameter("to", who)
                .setParameter("day", day)
                .executeUpdate();
        return remove(id);
    }

    /** What went back, the latest first. */
    public List<GivenBack> givenBack(UUID homeId) {
        return rows.createNativeQuery(
                        "select kind, label, given_to, day from key_return"
                                + " where home_id = :home order by day desc, id desc",
                        GivenBack.class)
                .setParameter("home", homeId)
                .getResultList();
    }

    public List<Listed> list(UUID homeId) {
        return of(homeId).stream()
                .map(code -> new Listed(code.id(), code.kind(), code.label()))
                .toList();
    }

    /** Says every key and code of the home, and keeps who asked, when and why. Refused without a reason. */
    public List<Shown> read(UUID homeId, String reason) {
        List<AccessCode> found = of(homeId);
        written(homeId, reason, found.size());
        var shown = new ArrayList<Shown>();
        for (AccessCode code : found) {
            shown.add(new Shown(code.id(), code.kind(), code.label(), secrets.show(homeId, code.secret())));
        }
        return shown;
    }

    private void written(UUID homeId, String reason, int codes) {
        var checks = new Checks();
        String why = checks.optionalLine("reason", reason);
        if (why == null) {
            throw Refusal.of("access.reason").at("reason").thrown();
        }
        checks.orRefuse();
        rows.createNativeQuery("insert into access_reading (home_id, reason, codes) values (:home, :reason, :codes)")
                .setParameter("home", homeId)
                .setParameter("reason", why)
                .setParameter("codes", codes)
                .executeUpdate();
    }

    /** Who read the codes of this home, newest first. */
    public List<Reading> readings(UUID homeId) {
        return rows.createNativeQuery("""
                        select coalesce(made_by, '00000000-0000-0000-0000-000000000000'), made_at, reason, codes
                          from access_reading where tenant_id = current_tenant() and home_id = :home
                         order by made_at desc, id desc
                        """, Reading.class)
                .setParameter("home", homeId)
                .getResultList();
    }

    private List<AccessCode> of(UUID homeId) {
        return rows.createQuery("from AccessCode where homeId = :home order by position, id", AccessCode.class)
                .setParameter("home", homeId)
                .getResultList();
    }
}
