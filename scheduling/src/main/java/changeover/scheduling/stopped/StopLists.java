package changeover.scheduling.stopped;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** The stopped machines of the current business, in lists. What serves a whole building is stopped in every home of it. */
@ApplicationScoped
public class StopLists {

    private static final String FROM = """
            select s.id, s.home_id,
                   case when u.id is null then concat_ws(', ', h.street, h.unit_label, h.city)
                        else concat_ws(', ', u.street, u.city) end as home, s.equipment_id, q.name as machine,
                   v.id as visit_id, s.finding_id, coalesce(m.name, '') as person, s.at, s.day, s.sentence_code, s.seen,
                   s.language, s.shut_off, s.ticket, s.place, t.only_heat, t.freezing, t.tonight, t.office_who, t.office_at,
                   t.customer_who, t.customer_at, t.at as heat_at, coalesce(t.name, '') as heat_by, b.how,
                   coalesce(r.name, '') as back_by, b.ticket_kind, b.ticket_number, b.ticket_until, b.day as back_on, b.done,
                   w.name as back_partner
              from machine_stop s
              join home h on (h.tenant_id, h.id) = (s.tenant_id, s.home_id)
              left join equipment q on (q.tenant_id, q.id) = (s.tenant_id, s.equipment_id)
              left join building u on (u.tenant_id, u.id) = (s.tenant_id, q.building_id)
              left join visit v on (v.tenant_id, v.id) = (s.tenant_id, s.visit_id)
              left join membership m on (m.tenant_id, m.person_id) = (s.tenant_id, s.person_id)
              left join back_in_service b on (b.tenant_id, b.stop_id) = (s.tenant_id, s.id)
              left join membership r on (r.tenant_id, r.person_id) = (b.tenant_id, b.person_id)
              left join partner w on (w.tenant_id, w.id) = (b.tenant_id, b.partner_id)
              left join lateral (
                select x.*, n.name from stop_heat x
                  left join membership n on (n.tenant_id, n.person_id) = (x.tenant_id, x.person_id)
                 where (x.tenant_id, x.stop_id) = (s.tenant_id, s.id) order by x.at desc, x.id desc limit 1) t on true
             where s.tenant_id = current_tenant()
            """;

    /** Stopped in the home itself, or at a machine that serves its building. */
    private static final String IN_HOME = """
             and (s.home_id = :home or q.building_id = (
               select x.building_id from home x where (x.tenant_id, x.id) = (s.tenant_id, :home)))
            """;

    @Inject
    EntityManager rows;

    public Optional<MachineStop> find(UUID id) {
        return read(ask(" and s.id = :id").setParameter("id", id)).stream().findFirst();
    }

    /** Those named, in the order in which they were stopped. */
    public List<MachineStop> all(Collection<UUID> ids) {
        return ids.isEmpty()
                ? List.of()
                : read(ask(" and s.id in (:ids) order by s.at, s.id").setParameter("ids", ids));
    }

    /** Everything that must not be used today, the longest stopped first. */
    public List<MachineStop> open() {
        return read(ask(" and b.id is null order by s.day, s.at, s.id"));
    }

    public int countOpen() {
        return ((Number) rows.createNativeQuery(
                                "select count(*) from machine_stop s where s.tenant_id = current_tenant()"
                                        + " and not exists (select from back_in_service b"
                                        + " where (b.tenant_id, b.stop_id) = (s.tenant_id, s.id))")
                        .getSingleResult())
                .intValue();
    }

    /** Those that ended, the newest first. */
    public List<MachineStop> over(int from, int count) {
        return read(ask(" and b.id is not null order by b.at desc, s.id desc")
                .setFirstResult(from)
                .setMaxResults(count));
    }

    /** Those that ended since a day, whose duties may still be owed. */
    public List<MachineStop> overSince(LocalDate day) {
        return read(ask(" and b.day >= :day order by s.day, s.id").setParameter("day", day));
    }

    /** Everything that was ever stopped in a home or in its building, the newest first. */
    public List<MachineStop> ofHome(UUID home) {
        return read(ask(IN_HOME + " order by s.at desc, s.id desc").setParameter("home", home));
    }

    /** The stop, where it is one of that home or of its building. */
    public Optional<MachineStop> in(UUID home, UUID stop) {
        return read(ask(IN_HOME + " and s.id = :id").setParameter("home", home).setParameter("id", stop)).stream()
                .findFirst();
    }

    /** What must not be used in these homes, by home. */
    public Map<UUID, List<MachineStop>> openIn(Collection<UUID> homes) {
        if (homes.isEmpty()) {
            return Map.of();
        }
        Map<UUID, Set<UUID>> byStop = homesOf(homes);
        Map<UUID, List<MachineStop>> open = new LinkedHashMap<>();
        for (MachineStop stop : allByDay(byStop.keySet())) {
            byStop.getOrDefault(stop.id(), Set.of())
                    .forEach(home ->
                            open.computeIfAbsent(home, _ -> new ArrayList<>()).add(stop));
        }
        return open;
    }

    /** In which of these homes each open stop holds. */
    private Map<UUID, Set<UUID>> homesOf(Collection<UUID> homes) {
        List<Tuple> pairs = rows.createNativeQuery("""
                        select s.id as stop, h.id as home
                          from machine_stop s
                          left join equipment q on (q.tenant_id, q.id) = (s.tenant_id, s.equipment_id)
                          join home h on h.tenant_id = s.tenant_id and (h.id = s.home_id or h.building_id = q.building_id)
                         where s.tenant_id = current_tenant() and h.id in (:homes)
                           and not exists (select from back_in_service b where (b.tenant_id, b.stop_id) = (s.tenant_id, s.id))
                        """, Tuple.class)
                .setParameter("homes", homes)
                .getResultList();
        return pairs.stream()
                .collect(Collectors.groupingBy(
                        pair -> pair.get("stop", UUID.class),
                        Collectors.mapping(pair -> pair.get("home", UUID.class), Collectors.toSet())));
    }

    private List<MachineStop> allByDay(Collection<UUID> ids) {
        return ids.isEmpty()
                ? List.of()
                : read(ask(" and s.id in (:ids) order by s.day, s.at, s.id").setParameter("ids", ids));
    }

    private Query ask(String rest) {
        return rows.createNativeQuery(FROM + rest, Tuple.class);
    }

    @SuppressWarnings("unchecked")
    private List<MachineStop> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        StopsBeside said = StopsBeside.of(
                rows, found.stream().map(row -> row.get("id", UUID.class)).toList());
        return found.stream()
                .map(row -> StopRow.of(row, said.of(row.get("id", UUID.class), row.get("day", LocalDate.class))))
                .toList();
    }
}
