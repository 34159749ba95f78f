package changeover.scheduling.claims;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The serials that technicians of the current business read from the parts they took out and put in. */
@ApplicationScoped
public class SerialsRead {

    @Inject
    EntityManager rows;

    /**
     * What whoever stood before the machine read of a part that nobody has claimed yet.
     *
     * @param maker of the machine, empty where its card does not say
     */
    public record Noted(String part, @Nullable UUID equipmentId, String maker, String oldSerial, String newSerial) {}

    /** Of a visit's parts with a serial the one to claim first: those under the maker's warranty come before others. */
    public Optional<Noted> noted(UUID visit) {
        @SuppressWarnings("unchecked")
        List<Tuple> found = rows.createNativeQuery("""
                        select u.part_code, u.equipment_id, coalesce(q.make, '') as maker, coalesce(u.old_serial, '') as came_out,
                               coalesce(u.new_serial, '') as went_in
                          from part_used u left join equipment q on (q.tenant_id, q.id) = (u.tenant_id, u.equipment_id)
                         where u.tenant_id = current_tenant() and u.visit_id = :visit
                           and (u.old_serial is not null or u.new_serial is not null)
                           and not exists (select from part_claim c
                             where (c.tenant_id, c.visit_id, c.part_code) = (u.tenant_id, u.visit_id, u.part_code)
                               and c.old_serial is not distinct from u.old_serial
                               and c.new_serial is not distinct from u.new_serial)
                         order by u.why = 'warranty' desc, u.made_at, u.id limit 1""", Tuple.class)
                .setParameter("visit", visit)
                .getResultList();
        return found.stream()
                .findFirst()
                .map(row -> new Noted(
                        row.get("part_code", String.class),
                        row.get("equipment_id", UUID.class),
                        row.get("maker", String.class),
                        row.get("came_out", String.class),
                        row.get("went_in", String.class)));
    }
}
