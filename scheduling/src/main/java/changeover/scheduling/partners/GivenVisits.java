package changeover.scheduling.partners;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The visits that the current business has given to partners. A visit is in one hand: the database refuses the second. */
@ApplicationScoped
public class GivenVisits {

    private static final String NOW = """
            select w.id, w.visit_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, w.partner_id, p.name, p.trade, p.phone,
              coalesce(d.day, w.day) as day, w.price_minor, w.currency, w.note, d.id is not null as done,
              exists (select 1 from partner_report r where r.tenant_id = w.tenant_id and r.visit_id = w.visit_id
                and r.partner_id = w.partner_id) as report
              from partner_visit w
              join partner p on p.tenant_id = w.tenant_id and p.id = w.partner_id
              join visit v on v.tenant_id = w.tenant_id and v.id = w.visit_id
              join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
              left join partner_visit_done d on d.tenant_id = w.tenant_id and d.given_id = w.id
             where not exists (select 1 from partner_visit_end z where z.tenant_id = w.tenant_id and z.given_id = w.id)
            """;

    /**
     * What was agreed with a partner.
     *
     * @param price what they ask of us, before taxes
     */
    public record Deal(
            UUID partner,
            LocalDate day,
            Money price,
            @Nullable String note) {}

    @Inject
    EntityManager rows;

    @Inject
    Partners partners;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    Today today;

    /** With whom a visit is, or who did it; empty where it is ours. */
    public Optional<GivenVisit> of(UUID visit) {
        return read(rows.createNativeQuery(NOW + " and w.visit_id = :visit", Tuple.class)
                        .setParameter("visit", visit))
                .stream()
                .findFirst();
    }

    /** Those that partners still have to make, or that nobody has said they made; the earliest first. */
    public List<GivenVisit> open() {
        return read(rows.createNativeQuery(NOW + """
                         and d.id is null and not exists (select 1 from visit_ending e
                           where e.tenant_id = w.tenant_id and e.visit_id = w.visit_id)
                         order by w.day, w.id""", Tuple.class));
    }

    /** What a partner did and still has, the newest first. */
    public List<GivenVisit> ofPartner(UUID partner, int most) {
        return read(rows.createNativeQuery(
                        NOW + " and w.partner_id = :partner order by coalesce(d.day, w.day) desc, w.id", Tuple.class)
                .setParameter("partner", partner)
                .setMaxResults(most));
    }

    /** Who did the visits of a home that partners did, by visit. */
    @SuppressWarnings("unchecked")
    public Map<UUID, String> namesIn(UUID home) {
        List<Tuple> found = rows.createNativeQuery("""
                        select d.visit_id, p.name from partner_visit_done d
                          join partner p on p.tenant_id = d.tenant_id and p.id = d.partner_id
                          join visit v on v.tenant_id = d.tenant_id and v.id = d.visit_id
                         where v.home_id = :home""", Tuple.class)
                .setParameter("home", home)
                .getResultList();
        return found.stream()
                .collect(
                        Collectors.toMap(row -> row.get("visit_id", UUID.class), row -> row.get("name", String.class)));
    }

    @SuppressWarnings("unchecked")
    private static List<GivenVisit> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream()
                .map(row -> new GivenVisit(
                        row.get("id", UUID.class),
                        row.get("visit_id", UUID.class),
                        row.get("home", String.class),
                        row.get("partner_id", UUID.class),
                        row.get("name", String.class),
                        row.get("trade", String.class),
                        row.get("phone", String.class),
                        row.get("day", LocalDate.class),
                        Money.ofMinor(row.get("price_minor", Long.class), row.get("currency", String.class)),
                        row.get("note", String.class),
                        row.get("done", Boolean.class),
                        row.get("report", Boolean.class)))
                .toList();
    }

    /**
     * The partner goes instead of us: whatever day a technician had for it is given back.
     *
     * @param moving why; asked for where the customer was told the hour that a technician had
     */
    public UUID give(UUID visit, Deal deal, @Nullable Moving moving) {
        var checks = new Checks();
        String note = checks.note("note", deal.note());
        checks.refuseIf(deal.day().isBefore(today.day()), "day", "partner.day-over");
        checks.refuseIf(deal.price().isNegative(), "price", "partner.price");
        checks.orRefuse();
        hold(visit);
        if (visits.find(visit).isEmpty()) {
            throw Refusal.of("visit.unknown").thrown();
        }
        if (visits.ending(visit).isPresent()) {
            throw Refusal.of("visit.has-ended").thrown();
        }
        Partner partner = partners.find(deal.partner())
                .orElseThrow(() -> Refusal.of("partner.unknown").at("partner").thrown());
        partner.refusal(deal.day()).ifPresent(refusal -> {
            throw refusal.thrown();
        });
        appointments.takeOff(visit, moving);
        UUID id = Ids.next();
        rows.createNativeQuery("insert into partner_visit (id, visit_id, partner_id, day, price_minor, currency, note)"
                        + " values (:id, :visit, :partner, :day, :price, :currency, cast(:note as text))")
                .setParameter("id", id)
                .setParameter("visit", visit)
                .setParameter("partner", partner.id())
                .setParameter("day", deal.day())
                .setParameter("price", deal.price().minor())
                .setParameter("currency", deal.price().currency().getCurrencyCode())
                .setParameter("note", note)
                .executeUpdate();
        return id;
    }

    /** Of two at once the second waits, and sees what the first did. */
    private void hold(UUID visit) {
        rows.createNativeQuery("select id from visit where id = :visit for update", Object.class)
                .setParameter("visit", visit)
                .getResultList();
    }

    /** It is ours again, without a day. Refused once the visit has ended. */
    public void takeBack(UUID visit, String why) {
        if (why.isBlank()) {
            throw Refusal.of("partner.says-why").at("why").thrown();
        }
        GivenVisit given = known(visit);
        if (visits.ending(visit).isPresent()) {
            throw Refusal.of("visit.has-ended").thrown();
        }
        rows.createNativeQuery("insert into partner_visit_end (given_id, day, why) values (:given, :day, :why)")
                .setParameter("given", given.id())
                .setParameter("day", today.day())
                .setParameter("why", why.strip())
                .executeUpdate();
    }

    /** The partner did it on a day; the visit itself is closed by whoever calls. */
    public void done(UUID visit, LocalDate day) {
        GivenVisit given = known(visit);
        if (given.done() || visits.ending(visit).isPresent()) {
            throw Refusal.of("visit.has-ended").thrown();
        }
        if (day.isAfter(today.day())) {
            throw Refusal.of("partner.day-to-come").at("day").thrown();
        }
        write(given, day);
    }

    /** The visit was closed: where a partner has it, they did it. */
    public void closed(UUID visit, LocalDate day) {
        of(visit).filter(given -> !given.done()).ifPresent(given -> write(given, day));
    }

    private void write(GivenVisit given, LocalDate day) {
        rows.createNativeQuery("""
                        insert into partner_visit_done (visit_id, partner_id, given_id, day, price_minor, currency)
                        values (:visit, :partner, :given, :day, :price, :currency)""")
                .setParameter("visit", given.visit())
                .setParameter("partner", given.partner())
                .setParameter("given", given.id())
                .setParameter("day", day)
                .setParameter("price", given.price().minor())
                .setParameter("currency", given.price().currency().getCurrencyCode())
                .executeUpdate();
    }

    private GivenVisit known(UUID visit) {
        hold(visit);
        return of(visit).orElseThrow(() -> Refusal.of("partner.not-given").thrown());
    }
}
