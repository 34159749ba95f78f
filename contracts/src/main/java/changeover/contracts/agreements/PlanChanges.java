package changeover.contracts.agreements;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * A customer changes plan in mid-term: another plan is offered from a day on for a term of its own, and with the yes to it the
 * present agreement ends on that day. What was billed of it is then settled as of any agreement that ended.
 */
@ApplicationScoped
public class PlanChanges {

    @Inject
    EntityManager rows;

    @Inject
    Agreements agreements;

    @Inject
    Offers offers;

    /**
     * What would be offered; nothing is written.
     *
     * @param from first day of the new term, a day of the old one that has not gone by
     */
    public Offer wanted(UUID agreement, UUID plan, LocalDate from, LocalDate day) {
        Agreement old = agreements
                .find(agreement)
                .orElseThrow(() -> Refusal.of("agreement.unknown").thrown());
        if (!Set.of(AgreementState.ACCEPTED, AgreementState.IN_FORCE).contains(agreements.state(old, day))
                || agreements.ending(agreement).isPresent()) {
            throw Refusal.of("agreement.change-in-force").thrown();
        }
        ids(
                        "select r.id from agreement r join agreement_acceptance y on y.tenant_id = r.tenant_id and y.agreement_id = r.id"
                                + " where r.renews_id = :agreement",
                        agreement)
                .stream()
                .flatMap(id -> agreements.find(id).stream())
                .findFirst()
                .ifPresent(next -> {
                    throw Refusal.of("agreement.change-renewed", Map.of("number", next.number()))
                            .thrown();
                });
        if (old.planId().equals(plan)) {
            throw Refusal.of("agreement.change-same").at("plan").thrown();
        }
        if (from.isBefore(day)
                || from.isBefore(old.term().from())
                || !from.isBefore(old.term().until())) {
            throw Refusal.of(
                            "agreement.change-in-term",
                            Map.of("day", DayInWords.of(old.term().last())))
                    .at("from")
                    .thrown();
        }
        return offers.forHome(old.homeId(), plan, from, day);
    }

    /** @throws changeover.contracts.words.Refused where {@link #wanted} is, or while another change waits for its answer */
    public Agreement offer(UUID agreement, UUID plan, LocalDate from, LocalDate day) {
        wait(agreement);
        Offer offer = wanted(agreement, plan, from, day);
        offered(agreement, day).ifPresent(open -> {
            throw Refusal.of("agreement.change-offered", Map.of("number", open.number()))
                    .thrown();
        });
        Agreement made = agreements.offer(offer);
        rows.createNativeQuery("insert into plan_change (agreement_id, instead_of_id) values (:made, :old)")
                .setParameter("made", made.id())
                .setParameter("old", agreement)
                .executeUpdate();
        return made;
    }

    /** The agreement whose place this one takes, or took. */
    public Optional<Agreement> insteadOf(UUID agreement) {
        return ids("select instead_of_id from plan_change where agreement_id = :agreement", agreement).stream()
                .flatMap(id -> agreements.find(id).stream())
                .findFirst();
    }

    /** The offer to change this one that stands on the day. */
    public Optional<Agreement> offered(UUID agreement, LocalDate day) {
        return instead(agreement).stream()
                .filter(one -> agreements.state(one, day) == AgreementState.OFFERED)
                .findFirst();
    }

    /** What took its place. */
    public Optional<Agreement> taken(UUID agreement) {
        return instead(agreement).stream()
                .filter(one -> agreements.acceptance(one.id()).isPresent())
                .findFirst();
    }

    private List<Agreement> instead(UUID agreement) {
        return agreements.all(ids("select agreement_id from plan_change where instead_of_id = :agreement", agreement));
    }

    @SuppressWarnings("unchecked")
    private List<UUID> ids(String sql, UUID agreement) {
        return rows.createNativeQuery(sql, UUID.class)
                .setParameter("agreement", agreement)
                .getResultList();
    }

    /** Two people do not offer two changes of one agreement. */
    private void wait(UUID agreement) {
        rows.createNativeQuery("select 1 from pg_advisory_xact_lock(hashtextextended('plan change ' || :agreement, 0))")
                .setParameter("agreement", agreement.toString())
                .getSingleResult();
    }
}
