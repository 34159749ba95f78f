package changeover.contracts.agreements;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Which agreements of the current business near their end, inside the notice window of their place; nothing renews by
 * itself: an offer is made, and the customer's yes begins the next term.
 */
@ApplicationScoped
public class Renewals {

    /** The longest that a law looks ahead, with room: France asks three months. */
    private static final int LOOK_AHEAD_DAYS = 120;

    private static final String NEAR_THEIR_END = """
            select a.id, a.number, a.home_id, a.signer_id, a.plan_name_en, a.plan_name_fr, a.price_minor, a.currency,
              a.term_until, concat_ws(', ', h.street, h.unit_label, h.city) as home, h.country, h.region,
              c.name as signer, r.id as renewal, o.day as taken_over
            from agreement a
            join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
            join home h on h.tenant_id = a.tenant_id and h.id = a.home_id
            join customer c on c.tenant_id = a.tenant_id and c.id = a.signer_id
            left join agreement_taken_over o on o.tenant_id = a.tenant_id and o.agreement_id = a.id
            left join lateral (
              select r.id, ry.id as accepted from agreement r
                left join agreement_acceptance ry on ry.tenant_id = r.tenant_id and ry.agreement_id = r.id
               where r.tenant_id = a.tenant_id and r.renews_id = a.id and (ry.id is not null or r.valid_until >= :day)
               order by ry.id is null, r.number desc limit 1) r on true
            where a.term_until > :day and a.term_until <= :horizon and r.accepted is null
              and not exists (select from agreement_ending e where e.tenant_id = a.tenant_id and e.agreement_id = a.id)
            order by a.term_until, a.number
            """;

    @Inject
    EntityManager rows;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    /** Those that want an offer today, those that are late, and those that wait for the customer; the first to end first. */
    @SuppressWarnings("unchecked")
    public List<RenewalRow> list(LocalDate day) {
        List<Tuple> near = rows.createNativeQuery(NEAR_THEIR_END, Tuple.class)
                .setParameter("day", day)
                .setParameter("horizon", day.plusDays(LOOK_AHEAD_DAYS))
                .getResultList();
        return near.stream()
                .map(row -> row(row, day))
                .filter(row ->
                        row.renewalId() != null || !day.isBefore(row.notice().earliest()))
                .toList();
    }

    private static RenewalRow row(Tuple row, LocalDate day) {
        LocalDate last = row.get("term_until", LocalDate.class).minusDays(1);
        NoticeWindow notice =
                NoticeWindow.of(row.get("country", String.class) + "-" + row.get("region", String.class), last);
        UUID renewal = row.get("renewal", UUID.class);
        return new RenewalRow(
                row.get("id", UUID.class),
                row.get("number", Integer.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("signer_id", UUID.class),
                row.get("signer", String.class),
                new Wording(row.get("plan_name_en", String.class), row.get("plan_name_fr", String.class)),
                Money.ofMinor(row.get("price_minor", Long.class), row.get("currency", String.class)),
                last,
                notice,
                standing(renewal != null, notice, day, row.get("taken_over", LocalDate.class)),
                renewal);
    }

    /** What fell due before the take-over was nobody's here to send. */
    private static RenewalRow.Standing standing(
            boolean offered, NoticeWindow notice, LocalDate day, @Nullable LocalDate takenOver) {
        if (offered) {
            return RenewalRow.Standing.OFFERED;
        }
        boolean late = day.isAfter(notice.latest())
                && (takenOver == null || !notice.latest().isBefore(takenOver));
        return late ? RenewalRow.Standing.LATE : RenewalRow.Standing.DUE;
    }

    /** Makes the offer for the next term. Refused while one stands, or after the agreement was renewed. */
    public Agreement offer(UUID agreementId, LocalDate day) {
        return agreements.find(offerAll(List.of(agreementId), day).getFirst()).orElseThrow();
    }

    /** Makes the offers for the next terms of many agreements; all of them or none. */
    public List<UUID> offerAll(Collection<UUID> agreementIds, LocalDate day) {
        boolean stands = !rows.createQuery("""
                        select r.id from Agreement r where r.renewsId in :agreements
                        and (r.validUntil >= :day or exists (from Acceptance a where a.agreementId = r.id))
                        """, UUID.class)
                .setParameter("agreements", agreementIds)
                .setParameter("day", day)
                .setMaxResults(1)
                .getResultList()
                .isEmpty();
        if (stands) {
            throw Refusal.of("agreement.renewal-stands").thrown();
        }
        return agreements.offerAll(offers.renewals(agreementIds, day));
    }
}
