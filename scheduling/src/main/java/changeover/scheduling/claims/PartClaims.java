package changeover.scheduling.claims;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.returns.ReturnVisits;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The claims of the current business on makers: written for a part that a visit used, answered once. */
@ApplicationScoped
public class PartClaims {

    private static final String FROM = """
            select l.id, l.visit_id, l.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, q.name as machine,
                   l.part_code, coalesce(p.name_en, l.part_code) as name_en, coalesce(p.name_fr, l.part_code) as name_fr,
                   l.old_serial, l.new_serial, l.maker, l.claim_number, l.claimed_on, l.returned_on, l.credit_minor,
                   cast(l.currency as text) as currency, l.version, a.day, a.amount_minor,
                   cast(a.currency as text) as answered_in, a.words
              from part_claim l
              join home h on (h.tenant_id, h.id) = (l.tenant_id, l.home_id)
              left join equipment q on (q.tenant_id, q.id) = (l.tenant_id, l.equipment_id)
              left join part p on (p.tenant_id, p.code) = (l.tenant_id, l.part_code)
              left join claim_answer a on (a.tenant_id, a.claim_id) = (l.tenant_id, l.id)
             where l.tenant_id = current_tenant()
            """;

    @Inject
    EntityManager rows;

    @Inject
    Visits visits;

    @Inject
    ReturnVisits used;

    @Inject
    Today today;

    /** The same id again gives the claim that is there. */
    public PartClaim claim(UUID id, NewClaim facts) {
        Optional<PartClaim> before = find(id);
        if (before.isPresent()) {
            return before.get();
        }
        Visit visit = visits.find(facts.visitId())
                .orElseThrow(() -> Refusal.of("visit.unknown").thrown());
        used.refuseStrangers(visit, facts.partCode(), facts.equipmentId());
        if (facts.maker().isBlank()) {
            throw Refusal.of("text.missing").at("maker").thrown();
        }
        LocalDate day = claimedOn(facts.claimedOn());
        UUID machine = facts.equipmentId();
        Money credit = facts.credit();
        rows.createNativeQuery("""
                        insert into part_claim (id, visit_id, home_id, equipment_id, part_code, old_serial, new_serial, maker,
                          claim_number, claimed_on, credit_minor, currency)
                        values (:id, :visit, :home, cast(:machine as uuid), :part, cast(:old as text), cast(:new as text),
                          :maker, cast(:number as text), :day, cast(:credit as bigint), cast(:currency as text))
                        """)
                .setParameter("id", id)
                .setParameter("visit", visit.id())
                .setParameter("home", visit.homeId())
                .setParameter("machine", machine == null ? null : machine.toString())
                .setParameter("part", facts.partCode())
                .setParameter("old", facts.oldSerial())
                .setParameter("new", facts.newSerial())
                .setParameter("maker", facts.maker().strip())
                .setParameter("number", facts.number())
                .setParameter("day", day)
                .setParameter("credit", credit == null ? null : Long.toString(credit.minor()))
                .setParameter(
                        "currency", credit == null ? null : credit.currency().getCurrencyCode())
                .executeUpdate();
        return find(id).orElseThrow();
    }

    /** Today where nobody says; whoever writes it down later says the day. */
    private LocalDate claimedOn(@Nullable LocalDate said) {
        if (said != null && said.isAfter(today.day())) {
            throw Refusal.of("claim.ahead").at("claimed").thrown();
        }
        return said == null ? today.day() : said;
    }

    /**
     * The maker gave it a number, or the old part went back; or it was claimed on another day than was written.
     *
     * @param claimedOn null for the day that stands
     * @param version of the claim as it was shown
     */
    public void write(
            UUID id,
            @Nullable String number,
            @Nullable LocalDate returnedOn,
            @Nullable LocalDate claimedOn,
            int version) {
        PartClaim claim = locked(id);
        if (claim.version() != version) {
            throw Refusal.of("changed-meanwhile").thrown();
        }
        LocalDate claimed = claimedOn == null ? claim.claimedOn() : claimedOn(claimedOn);
        PartClaim.Answer answer = claim.answer();
        if (answer != null && answer.day().isBefore(claimed)) {
            throw Refusal.of("claim.answer-day").at("claimed").thrown();
        }
        if (returnedOn != null && (returnedOn.isBefore(claimed) || returnedOn.isAfter(today.day()))) {
            throw Refusal.of("constraint.a_claimed_part_goes_back_later")
                    .at("returned")
                    .thrown();
        }
        rows.createNativeQuery("update part_claim set claim_number = cast(:number as text),"
                        + " returned_on = cast(:returned as date), claimed_on = :claimed, version = version + 1"
                        + " where id = :id")
                .setParameter("claimed", claimed)
                .setParameter("number", number)
                .setParameter("returned", returnedOn == null ? null : returnedOn.toString())
                .setParameter("id", id)
                .executeUpdate();
    }

    /** The maker answered. @param amount null for a no, which says why */
    public void answer(UUID id, LocalDate day, @Nullable Money amount, @Nullable String words) {
        PartClaim claim = locked(id);
        if (claim.answer() != null) {
            throw Refusal.of("constraint.a_claim_is_answered_once").thrown();
        }
        if (day.isBefore(claim.claimedOn()) || day.isAfter(today.day())) {
            throw Refusal.of("claim.answer-day").at("day").thrown();
        }
        if (amount == null ? words == null || words.isBlank() : !amount.isPositive()) {
            throw Refusal.of(amount == null ? "text.missing" : "part-order.credit-of-nothing")
                    .at(amount == null ? "words" : "amount")
                    .thrown();
        }
        rows.createNativeQuery("""
                        insert into claim_answer (claim_id, day, amount_minor, currency, words)
                        values (:claim, :day, cast(:amount as bigint), cast(:currency as text), cast(:words as text))
                        """)
                .setParameter("claim", id)
                .setParameter("day", day)
                .setParameter("amount", amount == null ? null : Long.toString(amount.minor()))
                .setParameter(
                        "currency", amount == null ? null : amount.currency().getCurrencyCode())
                .setParameter("words", words)
                .executeUpdate();
    }

    public Optional<PartClaim> find(UUID id) {
        return read(rows.createNativeQuery(FROM + " and l.id = :id", Tuple.class)
                        .setParameter("id", id))
                .stream()
                .findFirst();
    }

    /** Those that no maker has answered, the oldest first. */
    public List<PartClaim> open() {
        return read(rows.createNativeQuery(FROM + " and a.id is null order by l.claimed_on, l.id", Tuple.class));
    }

    /** Those that were answered, the newest first. */
    public List<PartClaim> over(int from, int count) {
        return read(rows.createNativeQuery(FROM + " and a.id is not null order by a.day desc, l.id desc", Tuple.class)
                .setFirstResult(from)
                .setMaxResults(count));
    }

    public List<PartClaim> ofVisit(UUID visit) {
        return read(rows.createNativeQuery(FROM + " and l.visit_id = :visit order by l.id", Tuple.class)
                .setParameter("visit", visit));
    }

    private PartClaim locked(UUID id) {
        rows.createNativeQuery("select id from part_claim where id = :id for update", Object.class)
                .setParameter("id", id)
                .getResultList();
        return find(id).orElseThrow(() -> Refusal.of("claim.unknown").thrown());
    }

    @SuppressWarnings("unchecked")
    private static List<PartClaim> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream().map(PartClaims::row).toList();
    }

    private static PartClaim row(Tuple row) {
        LocalDate answered = row.get("day", LocalDate.class);
        return new PartClaim(
                row.get("id", UUID.class),
                row.get("visit_id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("machine", String.class),
                row.get("part_code", String.class),
                new Wording(row.get("name_en", String.class), row.get("name_fr", String.class)),
                row.get("old_serial", String.class),
                row.get("new_serial", String.class),
                row.get("maker", String.class),
                row.get("claim_number", String.class),
                row.get("claimed_on", LocalDate.class),
                row.get("returned_on", LocalDate.class),
                money(row, "credit_minor", "currency"),
                row.get("version", Integer.class),
                answered == null
                        ? null
                        : new PartClaim.Answer(
                                answered, money(row, "amount_minor", "answered_in"), row.get("words", String.class)));
    }

    private static @Nullable Money money(Tuple row, String minor, String currency) {
        Long amount = row.get(minor, Long.class);
        return amount == null ? null : Money.ofMinor(amount, row.get(currency, String.class));
    }
}
