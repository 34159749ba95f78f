package changeover.billing.invoices;

import changeover.billing.pricing.Warranties;
import changeover.billing.pricing.Warranty;
import changeover.billing.pricing.WarrantyFacts;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads who answers for the parts of a closed visit: the maker of the machine or part, we ourselves, the law of the home's place. */
@ApplicationScoped
class WarrantyRows {

    /** The law asks us for a machine only where its card says that we installed it: another shop's is that shop's to answer for. */
    private static final String FACTS = """
            select u.n, q.maker_warranty_until, q.registration, q.installed_on,
                   lower(btrim(q.installed_by)) = lower(btrim(b.name)) as by_us,
                   f.day as fitted, coalesce(p.months, 0) as makers_months, coalesce(g.months, 0) as our_months,
                   l.months as legal_months, l.source
              from unnest(?::text[], ?::uuid[]) with ordinality u(part_code, equipment_id, n)
              join business b on b.id = current_tenant()
              join home h on h.tenant_id = b.id and h.id = ?
              left join equipment q on q.tenant_id = b.id and q.id = u.equipment_id
              left join lateral (select c.day, v.kind from part_used x
                     join closure c on c.tenant_id = x.tenant_id and c.visit_id = x.visit_id
                     join visit v on v.tenant_id = x.tenant_id and v.id = x.visit_id
                    where x.tenant_id = b.id and x.equipment_id = u.equipment_id and x.part_code = u.part_code
                      and x.visit_id <> ? and c.day <= ? order by c.day desc limit 1) f on true
              left join lateral (select w.months from part_warranty w
                    where w.tenant_id = b.id and w.part_code = u.part_code and w.from_day <= f.day
                    order by w.from_day desc limit 1) p on true
              left join lateral (select w.months from labour_guarantee w
                    where w.tenant_id = b.id and w.work = case f.kind when 'plan' then 'maintenance' else 'repair' end
                      and w.from_day <= f.day
                    order by w.from_day desc limit 1) g on true
              left join lateral (select w.months, w.source from legal_warranty w
                    where w.tenant_id = b.id and w.region = h.country || '-' || h.region and w.from_day <= q.installed_on
                      and w.kind in ('', q.kind)
                    order by w.from_day desc, w.kind desc limit 1) l on true
             order by u.n""";

    /** One for each part of the visit, in its order. */
    List<Warranty> of(Connection connection, VisitClosed closed) throws SQLException {
        List<VisitClosed.Part> parts = closed.partsUsed();
        List<Warranty> found = new ArrayList<>();
        if (parts.isEmpty()) {
            return found;
        }
        try (PreparedStatement select = connection.prepareStatement(FACTS)) {
            select.setArray(
                    1,
                    connection.createArrayOf(
                            "text",
                            parts.stream().map(VisitClosed.Part::partCode).toArray()));
            select.setArray(
                    2,
                    connection.createArrayOf(
                            "uuid",
                            parts.stream().map(VisitClosed.Part::equipmentId).toArray()));
            select.setObject(3, closed.homeId());
            select.setObject(4, closed.visitId());
            select.setObject(5, closed.day());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                String why = parts.get(row.getInt("n") - 1).why();
                found.add(Warranties.of(facts(row, why), closed.day()));
            }
        }
        return found;
    }

    private static WarrantyFacts facts(ResultSet row, String why) throws SQLException {
        return new WarrantyFacts(
                why,
                row.getObject("maker_warranty_until", LocalDate.class),
                row.getString("registration"),
                fitted(row),
                law(row));
    }

    private static WarrantyFacts.@Nullable Fitted fitted(ResultSet row) throws SQLException {
        LocalDate day = row.getObject("fitted", LocalDate.class);
        return day == null
                ? null
                : new WarrantyFacts.Fitted(day, row.getInt("makers_months"), row.getInt("our_months"));
    }

    private static WarrantyFacts.@Nullable Law law(ResultSet row) throws SQLException {
        LocalDate installed = row.getObject("installed_on", LocalDate.class);
        String source = row.getString("source");
        return installed == null || source == null || !row.getBoolean("by_us")
                ? null
                : new WarrantyFacts.Law(installed, row.getInt("legal_months"), source);
    }
}
