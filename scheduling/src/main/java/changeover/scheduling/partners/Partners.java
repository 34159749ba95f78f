package changeover.scheduling.partners;

import changeover.contracts.tenants.Ids;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The partners of the current business that it works with, and their papers: two statements, however many. */
@ApplicationScoped
public class Partners {

    private static final String IN_USE = """
            select p.id, p.name, p.trade, p.phone, p.email from partner p
             where not exists (select 1 from partner_end e where e.tenant_id = p.tenant_id and e.partner_id = p.id)
             order by p.name, p.id
            """;

    private static final String PAPERS = """
            select q.id, q.partner_id, p.name, q.kind, q.number, q.expires_on, q.remind_days from partner_paper q
              join partner p on p.tenant_id = q.tenant_id and p.id = q.partner_id
             where not exists (select 1 from partner_paper_end e where e.tenant_id = q.tenant_id and e.paper_id = q.id)
               and not exists (select 1 from partner_end e where e.tenant_id = q.tenant_id and e.partner_id = q.partner_id)
             order by q.expires_on, p.name, q.id
            """;

    /** Who they are. */
    public record Facts(
            String name,
            String trade,
            @Nullable String phone,
            @Nullable String email) {}

    /** @param remindDays how many days before its last day somebody is told */
    public record Paper(String kind, @Nullable String number, LocalDate expiresOn, int remindDays) {}

    @Inject
    EntityManager rows;

    /** By name. */
    @SuppressWarnings("unchecked")
    public List<Partner> all() {
        Map<UUID, List<PartnerPaper>> papers = papers().stream().collect(Collectors.groupingBy(PartnerPaper::partner));
        List<Tuple> found = rows.createNativeQuery(IN_USE, Tuple.class).getResultList();
        return found.stream()
                .map(row -> new Partner(
                        row.get("id", UUID.class),
                        row.get("name", String.class),
                        row.get("trade", String.class),
                        row.get("phone", String.class),
                        row.get("email", String.class),
                        papers.getOrDefault(row.get("id", UUID.class), List.of())))
                .toList();
    }

    public Optional<Partner> find(UUID id) {
        return all().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** The papers of all of them, the first to end first. */
    @SuppressWarnings("unchecked")
    public List<PartnerPaper> papers() {
        List<Tuple> found = rows.createNativeQuery(PAPERS, Tuple.class).getResultList();
        return found.stream().map(Partners::paper).toList();
    }

    private static PartnerPaper paper(Tuple row) {
        return new PartnerPaper(
                row.get("id", UUID.class),
                row.get("partner_id", UUID.class),
                row.get("name", String.class),
                row.get("kind", String.class),
                row.get("number", String.class),
                row.get("expires_on", LocalDate.class),
                row.get("remind_days", Integer.class));
    }

    /** The licence of a partner that held on a day, also one that was put away since; the one that holds longest. */
    public Optional<PartnerPaper> licenceOn(UUID partner, LocalDate day) {
        return rows.createNativeQuery("""
                        select q.id, q.partner_id, p.name, q.kind, q.number, q.expires_on, q.remind_days from partner_paper q
                          join partner p on p.tenant_id = q.tenant_id and p.id = q.partner_id
                         where q.partner_id = :partner and q.kind = 'licence' and q.expires_on >= :day
                           and not exists (select 1 from partner_paper_end e
                             where e.tenant_id = q.tenant_id and e.paper_id = q.id and e.day <= :day)
                         order by q.expires_on desc, q.id limit 1
                        """, Tuple.class)
                .setParameter("partner", partner)
                .setParameter("day", day)
                .getResultStream()
                .map(row -> paper((Tuple) row))
                .findFirst();
    }

    /** Papers that are over or will be soon. */
    public List<PartnerPaper> runningOut(LocalDate day) {
        return papers().stream().filter(one -> one.isSpokenOf(day)).toList();
    }

    public UUID add(Facts facts) {
        var checks = new Checks();
        String name = checks.line("name", facts.name());
        String trade = checks.oneOf("trade", facts.trade(), Partner.TRADES);
        String phone = checks.phone("phone", facts.phone());
        String email = checks.mail("email", facts.email());
        checks.orRefuse();
        UUID id = Ids.next();
        rows.createNativeQuery("insert into partner (id, name, trade, phone, email)"
                        + " values (:id, :name, :trade, cast(:phone as text), cast(:email as text))")
                .setParameter("id", id)
                .setParameter("name", name)
                .setParameter("trade", trade)
                .setParameter("phone", phone)
                .setParameter("email", email)
                .executeUpdate();
        return id;
    }

    /** We work with them no longer; false where it was so already. */
    public boolean end(UUID id, LocalDate day) {
        return find(id).isPresent()
                && rows.createNativeQuery("insert into partner_end (partner_id, day) values (:partner, :day)"
                                        + " on conflict on constraint a_partner_ends_once do nothing")
                                .setParameter("partner", id)
                                .setParameter("day", day)
                                .executeUpdate()
                        > 0;
    }

    public UUID addPaper(UUID partner, Paper paper) {
        var checks = new Checks();
        String kind = checks.oneOf("kind", paper.kind(), PartnerPaper.KINDS);
        String number = checks.optionalLine("number", paper.number());
        checks.refuseIf(paper.remindDays() < 1 || paper.remindDays() > 365, "remindDays", "partner.remind-days");
        checks.orRefuse();
        if (find(partner).isEmpty()) {
            throw Refusal.of("partner.unknown").thrown();
        }
        UUID id = Ids.next();
        rows.createNativeQuery("insert into partner_paper (id, partner_id, kind, number, expires_on, remind_days)"
                        + " values (:id, :partner, :kind, cast(:number as text), :expires, :days)")
                .setParameter("id", id)
                .setParameter("partner", partner)
                .setParameter("kind", kind)
                .setParameter("number", number)
                .setParameter("expires", paper.expiresOn())
                .setParameter("days", paper.remindDays())
                .executeUpdate();
        return id;
    }

    /** It is put away: a new one took its place. False where it was so already. */
    public boolean putAway(UUID paper, LocalDate day) {
        return papers().stream().anyMatch(one -> one.id().equals(paper))
                && rows.createNativeQuery("insert into partner_paper_end (paper_id, day) values (:paper, :day)"
                                        + " on conflict on constraint a_partners_paper_ends_once do nothing")
                                .setParameter("paper", paper)
                                .setParameter("day", day)
                                .executeUpdate()
                        > 0;
    }
}
