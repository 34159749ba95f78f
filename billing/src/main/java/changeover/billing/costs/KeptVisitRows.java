package changeover.billing.costs;

import changeover.billing.costs.KeptVisit.How;
import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads the visits made for accepted agreements: three statements, however many. */
final class KeptVisitRows {

    private static final String LATEST = """
            l.coverage = 'included' and l.agreement_id is not null and l.day between ? and ? and l.visit_version = greatest(
                 (select max(n.visit_version) from invoice_line n
                   where n.tenant_id = l.tenant_id and n.visit_id = l.visit_id),
                 (select max(i.visit_version) from invoice i
                   where i.tenant_id = l.tenant_id and i.visit_id = l.visit_id))
               and (l.kind = 'labour' and l.item_code = 'hour' and l.unit = 'MIN'
                 or l.kind = 'part' and (l.part_kind is not null or v.kind = 'return'))""";

    private static final String GIVEN = """
            select l.visit_id, l.kind, l.item_code, coalesce(l.part_kind, ''), sum(l.quantity)
              from invoice_line l join visit v on v.tenant_id = l.tenant_id and v.id = l.visit_id
             where """ + " " + LATEST + " group by 1, 2, 3, 4 order by 1, 2, 3";

    private static final String KINDS = """
            select t.visit_id, coalesce(q.kind, ''), sum(t.minutes)::int
              from visit_task t
              left join closure c on c.tenant_id = t.tenant_id and c.visit_id = t.visit_id
              left join visit_ending n on n.tenant_id = t.tenant_id and n.visit_id = t.visit_id and n.how = 'closed'
              left join equipment q on q.tenant_id = t.tenant_id and q.id = t.equipment_id
             where t.who = 'technician' and coalesce(c.day, n.day) between ? and ? group by 1, 2""";

    /**
     * Visits of plans, returns for them, and the visits beside them at which an agreement gave something. A visit that ended as
     * closed without its close-out counts as it was planned.
     */
    private static final String VISITS = """
            with beside as (
              select distinct l.visit_id, l.agreement_id
                from invoice_line l join visit v on v.tenant_id = l.tenant_id and v.id = l.visit_id
               where """ + " " + LATEST + """
             )
            select v.id, v.kind, v.answers_id, coalesce(v.agreement_id, w.agreement_id, b.agreement_id), h.latitude, h.longitude,
                   coalesce(x.id, c.technician_id), coalesce(x.name, m.name, ''), coalesce(c.day, n.day),
                   coalesce(c.minutes, v.minutes), coalesce(c.extra_minutes, 0), coalesce(c.minutes_planned, v.minutes),
                   c.id is not null or n.how = 'closed', d.price_minor, d.currency,
                   greatest(1, (select e.people from visit_need e where e.tenant_id = v.tenant_id and e.visit_id = v.id),
                     (select max(e.people) from visit_task t
                        join task_need e on e.tenant_id = t.tenant_id and e.task_code = t.task_code
                       where t.tenant_id = v.tenant_id and t.visit_id = v.id)),
                   s.technician_id, sm.name
              from visit v
              join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
              left join visit w on w.tenant_id = v.tenant_id and w.id = v.answers_id
              left join beside b on b.visit_id = v.id
              left join closure c on c.tenant_id = v.tenant_id and c.visit_id = v.id
              left join visit_ending n on n.tenant_id = v.tenant_id and n.visit_id = v.id
               and n.how in ('no_access', 'closed')
              left join membership m on m.tenant_id = c.tenant_id and m.person_id = c.technician_id
              left join appointment_second s on s.tenant_id = v.tenant_id and s.visit_id = v.id
               and s.technician_id is distinct from c.technician_id
              left join membership sm on sm.tenant_id = s.tenant_id and sm.person_id = s.technician_id
              left join partner_visit_done d on d.tenant_id = v.tenant_id and d.visit_id = v.id
              left join partner x on x.tenant_id = d.tenant_id and x.id = d.partner_id
             where coalesce(c.day, n.day) between ? and ?
               and (v.kind in ('plan', 'return') and coalesce(v.agreement_id, w.agreement_id) is not null
                 or b.visit_id is not null)
             order by 9, v.id""";

    private final Connection connection;
    private final LocalDate from;
    private final LocalDate until;

    /** @param until the last day, in */
    KeptVisitRows(Connection connection, LocalDate from, LocalDate until) {
        this.connection = connection;
        this.from = from;
        this.until = until;
    }

    List<KeptVisit> visits(Map<UUID, Deal> deals) throws SQLException {
        Map<UUID, List<KeptVisit.Given>> parts = new HashMap<>();
        Map<UUID, Integer> minutes = new HashMap<>();
        given(parts, minutes);
        Map<UUID, Map<String, Integer>> kinds = kinds();
        List<KeptVisit> visits = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(VISITS)) {
            days(select, 4);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                Deal deal = deals.get(row.getObject(4, UUID.class));
                if (deal != null) {
                    visits.add(visit(
                            row,
                            deal,
                            minutes.getOrDefault(id, 0),
                            kinds.getOrDefault(id, Map.of()),
                            parts.getOrDefault(id, List.of())));
                }
            }
        }
        return visits;
    }

    private static KeptVisit visit(
            ResultSet row, Deal deal, int given, Map<String, Integer> kinds, List<KeptVisit.Given> parts)
            throws SQLException {
        @Nullable UUID technician = row.getObject(7, UUID.class);
        String currency = row.getString(15);
        @Nullable Money partner = currency == null ? null : Money.ofMinor(row.getLong(14), currency);
        int onSite = partner == null ? row.getInt(10) : 0;
        int extra = Math.min(row.getInt(11), onSite);
        int needed = row.getInt(16);
        @Nullable UUID along = row.getObject(17, UUID.class);
        KeptVisit.@Nullable Second second =
                partner != null || along == null ? null : new KeptVisit.Second(along, row.getString(18));
        int people = second == null ? 1 : 2;
        How how = how(row.getString(2), row.getBoolean(13));
        return new KeptVisit(
                row.getObject(1, UUID.class),
                how,
                row.getObject(3, UUID.class),
                deal,
                CostBook.Spot.of(row.getBigDecimal(5), row.getBigDecimal(6)),
                technician,
                row.getString(8),
                second,
                row.getObject(9, LocalDate.class),
                needed,
                how == How.PLANNED && partner == null ? needed * row.getInt(12) : 0,
                people
                        * switch (how) {
                            case PLANNED -> onSite - extra;
                            case RETURN -> onSite;
                            case NO_ACCESS, BESIDE, SENT -> 0;
                        },
                given,
                kinds,
                parts,
                partner);
    }

    private static How how(String kind, boolean closed) {
        return switch (kind) {
            case "plan" -> closed ? How.PLANNED : How.NO_ACCESS;
            case "return" -> closed ? How.RETURN : How.NO_ACCESS;
            default -> How.BESIDE;
        };
    }

    private void given(Map<UUID, List<KeptVisit.Given>> parts, Map<UUID, Integer> minutes) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(GIVEN)) {
            days(select, 2);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID visit = row.getObject(1, UUID.class);
                if (row.getString(2).equals("part")) {
                    parts.computeIfAbsent(visit, _ -> new ArrayList<>())
                            .add(new KeptVisit.Given(row.getString(3), row.getString(4), row.getBigDecimal(5)));
                } else {
                    minutes.merge(visit, row.getBigDecimal(5).intValue(), Integer::sum);
                }
            }
        }
    }

    private Map<UUID, Map<String, Integer>> kinds() throws SQLException {
        Map<UUID, Map<String, Integer>> kinds = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(KINDS)) {
            days(select, 2);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                kinds.computeIfAbsent(row.getObject(1, UUID.class), _ -> new HashMap<>())
                        .put(row.getString(2), row.getInt(3));
            }
        }
        return kinds;
    }

    private void days(PreparedStatement select, int times) throws SQLException {
        for (int at = 1; at <= times; at += 2) {
            select.setObject(at, from);
            select.setObject(at + 1, until);
        }
    }
}
