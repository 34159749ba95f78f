package changeover.billing.invoices;

import changeover.scheduling.stock.WhatPlansLeave;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Array;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import java.util.UUID;

/** What a plan gives of a part in a year, less what its visits took as included and what was given between them. */
@ApplicationScoped
class PlanPartsLeft implements WhatPlansLeave {

    private static final String LEFT = """
            select a.id, p.part_kind, p.quantity, p.quantity - coalesce((
                     select sum(l.quantity) from invoice_line l
                      where l.tenant_id = p.tenant_id and l.agreement_id = p.agreement_id and l.kind = 'part'
                        and l.coverage = 'included' and l.part_kind = p.part_kind
                        and l.visit_version = greatest(
                          (select max(n.visit_version) from invoice_line n
                            where n.tenant_id = l.tenant_id and n.visit_id = l.visit_id),
                          (select max(i.visit_version) from invoice i
                            where i.tenant_id = l.tenant_id and i.visit_id = l.visit_id))), 0) - coalesce((
                     select sum(g.quantity) from part_given g
                      where g.tenant_id = p.tenant_id and g.agreement_id = p.agreement_id and g.part_kind = p.part_kind), 0)
              from agreement a
              join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
              join agreement_part p on p.tenant_id = a.tenant_id and p.agreement_id = a.id
              left join agreement_ending e on e.tenant_id = a.tenant_id and e.agreement_id = a.id
             where a.tenant_id = current_tenant() and a.home_id = ? and p.part_kind = any (?)
               and ? >= a.term_from and ? < a.term_until and (e.day is null or e.day > ?)
             order by a.term_from desc, array_position(?, p.part_kind) limit 1
            """;

    @Inject
    AgroalDataSource datasource;

    @Override
    public Optional<Left> of(UUID home, Collection<String> kinds, LocalDate day) {
        try (var connection = datasource.getConnection();
                var ask = connection.prepareStatement(LEFT)) {
            Array wanted = connection.createArrayOf("text", kinds.toArray());
            ask.setObject(1, home);
            ask.setArray(2, wanted);
            ask.setObject(3, day);
            ask.setObject(4, day);
            ask.setObject(5, day);
            ask.setArray(6, wanted);
            try (var row = ask.executeQuery()) {
                return row.next()
                        ? Optional.of(new Left(
                                row.getObject(1, UUID.class),
                                row.getString(2),
                                row.getBigDecimal(3),
                                row.getBigDecimal(4)))
                        : Optional.empty();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("what a plan leaves of a part could not be read", cause);
        }
    }
}
