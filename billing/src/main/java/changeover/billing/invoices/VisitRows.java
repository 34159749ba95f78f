package changeover.billing.invoices;

import changeover.billing.pricing.ClosedVisit.UsedPart;
import changeover.billing.pricing.Coverage;
import changeover.billing.pricing.Warranty;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads who pays for a visit, what the agreement still gives, and what the parts are called. */
@ApplicationScoped
class VisitRows {

    private record Payer(UUID id, String language, @Nullable String purchaseOrder) {}

    private record Agreement(UUID id, Wording plan, int minutesLeft, BigDecimal discount) {}

    @Inject
    NightMinutes nights;

    @Inject
    HomeZones zones;

    @Inject
    WarrantyRows warranties;

    /** Empty when nobody is known who could be asked to pay. */
    Optional<VisitFacts> of(Connection connection, VisitClosed closed) throws SQLException {
        Agreement agreement = agreement(connection, closed);
        Payer payer = payer(connection, closed, agreement == null ? null : agreement.id());
        if (payer == null) {
            return Optional.empty();
        }
        Coverage coverage = agreement == null
                ? Coverage.NONE
                : new Coverage(
                        agreement.plan(),
                        caps(connection, agreement.id(), closed.visitId()),
                        agreement.minutesLeft(),
                        agreement.discount());
        return Optional.of(new VisitFacts(
                payer.id(),
                payer.language(),
                payer.purchaseOrder(),
                agreement == null ? null : agreement.id(),
                coverage,
                WorkDone.of(connection, closed),
                nights.minutes(connection, closed),
                zones.of(connection, closed.homeId(), closed.day()).orElse(null),
                parts(connection, closed, coverage, warranties.of(connection, closed))));
    }

    /** The visit's own agreement, or the one in force at the home that day: a call gets its discount too. */
    private static @Nullable Agreement agreement(Connection connection, VisitClosed closed) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select a.id, a.plan_name_en, a.plan_name_fr, a.discount_percent,
                       a.included_minutes - coalesce((
                         select sum(l.quantity) from invoice_line l
                          where l.tenant_id = a.tenant_id and l.agreement_id = a.id and l.kind = 'labour'
                            and l.coverage = 'included' and l.unit = 'MIN' and l.item_code = 'hour'
                            and l.visit_id <> ? and l.visit_version = greatest(
                              (select max(n.visit_version) from invoice_line n
                                where n.tenant_id = l.tenant_id and n.visit_id = l.visit_id),
                              (select max(i.visit_version) from invoice i
                                where i.tenant_id = l.tenant_id and i.visit_id = l.visit_id))), 0)
                  from agreement a
                  join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
                  left join agreement_ending e on e.tenant_id = a.tenant_id and e.agreement_id = a.id
                 where a.id = ? or (?::uuid is null and a.home_id = ? and ? >= a.term_from and ? < a.term_until
                                    and (e.day is null or e.day > ?))
                 order by a.term_from desc limit 1""")) {
            select.setObject(1, closed.visitId());
            select.setObject(2, closed.agreementId());
            select.setObject(3, closed.agreementId());
            select.setObject(4, closed.homeId());
            select.setObject(5, closed.day());
            select.setObject(6, closed.day());
            select.setObject(7, closed.day());
            ResultSet row = select.executeQuery();
            return row.next()
                    ? new Agreement(
                            row.getObject(1, UUID.class),
                            new Wording(row.getString(2), row.getString(3)),
                            row.getInt(5),
                            row.getBigDecimal(4).stripTrailingZeros())
                    : null;
        }
    }

    private static @Nullable Payer payer(Connection connection, VisitClosed closed, @Nullable UUID agreement)
            throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select c.id, c.language, coalesce(p.purchase_order, c.purchase_order)
                  from customer c
                  left join home_part p on p.tenant_id = c.tenant_id and p.customer_id = c.id and p.home_id = ?
                   and p.from_day <= ? and (p.until_day is null or p.until_day > ?)
                  left join agreement a on a.tenant_id = c.tenant_id and a.id = ? and c.id = coalesce((
                    select t.was_payer_id from agreement_takeover t
                     where t.tenant_id = a.tenant_id and t.agreement_id = a.id and t.day > ? order by t.day limit 1),
                    a.payer_id)
                 where p.id is not null or a.id is not null
                 order by (a.id is not null) desc, array_position(
                   array['pays', 'signs', 'lives', 'gets_report', 'lets_in'], p.part) nulls last limit 1""")) {
            select.setObject(1, closed.homeId());
            select.setObject(2, closed.day());
            select.setObject(3, closed.day());
            select.setObject(4, agreement);
            select.setObject(5, closed.day());
            ResultSet row = select.executeQuery();
            return row.next() ? new Payer(row.getObject(1, UUID.class), row.getString(2), row.getString(3)) : null;
        }
    }

    private static Map<String, Coverage.Cap> caps(Connection connection, UUID agreement, UUID visit)
            throws SQLException {
        Map<String, Coverage.Cap> caps = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select p.part_kind, p.quantity, p.quantity - coalesce((
                         select sum(l.quantity) from invoice_line l
                          where l.tenant_id = p.tenant_id and l.agreement_id = p.agreement_id and l.kind = 'part'
                            and l.coverage = 'included' and l.part_kind = p.part_kind
                            and l.visit_id <> ? and l.visit_version = greatest(
                              (select max(n.visit_version) from invoice_line n
                                where n.tenant_id = l.tenant_id and n.visit_id = l.visit_id),
                              (select max(i.visit_version) from invoice i
                                where i.tenant_id = l.tenant_id and i.visit_id = l.visit_id))), 0) - coalesce((
                         select sum(g.quantity) from part_given g
                          where g.tenant_id = p.tenant_id and g.agreement_id = p.agreement_id
                            and g.part_kind = p.part_kind), 0)
                  from agreement_part p where p.agreement_id = ?""")) {
            select.setObject(1, visit);
            select.setObject(2, agreement);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                caps.put(row.getString(1), new Coverage.Cap(row.getBigDecimal(2), row.getBigDecimal(3)));
            }
        }
        return caps;
    }

    private static List<UsedPart> parts(
            Connection connection, VisitClosed closed, Coverage coverage, List<Warranty> warranties)
            throws SQLException {
        Map<String, UsedPart> known = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(
                "select code, coalesce(fits_key, code), name_en, name_fr, unit from part where code = any (?)")) {
            Object[] codes = closed.partsUsed().stream()
                    .map(VisitClosed.Part::partCode)
                    .distinct()
                    .toArray();
            select.setArray(1, connection.createArrayOf("text", codes));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                String code = row.getString(1);
                String kind = coverage.parts().containsKey(code) ? code : row.getString(2);
                Wording name = new Wording(row.getString(3), row.getString(4));
                known.put(code, new UsedPart(code, kind, name, BigDecimal.ONE, row.getString(5), false));
            }
        }
        List<UsedPart> all = new ArrayList<>();
        for (VisitClosed.Part used : closed.partsUsed()) {
            all.add(used(used, known.get(used.partCode()), warranties.get(all.size())));
        }
        return all;
    }

    private static UsedPart used(VisitClosed.Part used, @Nullable UsedPart known, Warranty warranty) {
        return known == null
                ? new UsedPart(
                        used.partCode(),
                        used.partCode(),
                        new Wording(used.partCode(), used.partCode()),
                        used.quantity(),
                        "C62",
                        warranty)
                : new UsedPart(known.code(), known.kind(), known.name(), used.quantity(), known.unit(), warranty);
    }
}
