package changeover.scheduling.visits;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Homes under an agreement that were visited and whose machines are still to be read: nothing is kept there until then. */
@ApplicationScoped
public class StillUnread {

    private static final String VISITED = """
            select h.id, concat_ws(', ', h.street, h.unit_label, h.city) as home,
              coalesce((select c.name from customer c where c.tenant_id = a.tenant_id and c.id = a.signer_id), '') as who,
              max(e.day) as visited
              from home h
              join agreement a on a.tenant_id = h.tenant_id and a.home_id = h.id and a.term_until > :day
              join visit v on v.tenant_id = a.tenant_id and v.agreement_id = a.id
              join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id and e.how = 'closed'
             where h.tenant_id = current_tenant() and h.to_be_read
               and not exists (select from agreement_ending n where n.tenant_id = a.tenant_id and n.agreement_id = a.id)
             group by 1, 2, 3 order by visited, home
            """;

    @Inject
    EntityManager rows;

    /** @param visited the last day on which somebody was there */
    public record Unread(UUID homeId, String home, String customer, LocalDate visited) {}

    /** The longest waiting first. */
    public List<Unread> after(LocalDate day, int most) {
        @SuppressWarnings("unchecked")
        List<Tuple> found = rows.createNativeQuery(VISITED, Tuple.class)
                .setParameter("day", day)
                .setMaxResults(most)
                .getResultList();
        return found.stream()
                .map(row -> new Unread(
                        row.get(0, UUID.class),
                        row.get(1, String.class),
                        row.get(2, String.class),
                        row.get(3, LocalDate.class)))
                .toList();
    }
}
