package changeover.billing.estimates;

import changeover.billing.invoices.PromisedLines;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The lines of accepted estimates that stand in somebody's own words, for the visit that does the work. */
@ApplicationScoped
class AcceptedLines implements PromisedLines {

    /** Without those that another visit of the same estimate has asked for, or from whose draft somebody took them off. */
    private static final String AGREED = """
            select e.work, e.contract_form, o.label, e.currency, l.position, l.words_en, l.words_fr, l.quantity, l.unit,
                   l.unit_price_minor, l.work
              from estimate_work w
              join estimate e on e.tenant_id = w.tenant_id and e.id = w.estimate_id
              join estimate_offer o on o.tenant_id = w.tenant_id and o.estimate_id = w.estimate_id
              join estimate_answer a on a.tenant_id = w.tenant_id and a.estimate_id = w.estimate_id and a.how = 'accepted'
               and a.undone_at is null
              left join estimate_line l on l.tenant_id = w.tenant_id and l.estimate_id = w.estimate_id and l.kind = 'other'
               and not exists (
                 select 1 from estimate_work x
                   join (select tenant_id, visit_id, item_code, invoice_id from invoice_line where kind = 'other'
                         union all select tenant_id, visit_id, item_code, invoice_id from line_taken_off where kind = 'other') y
                     on y.tenant_id = x.tenant_id and y.visit_id = x.visit_id and y.item_code = o.label || '/' || l.position
                  where x.tenant_id = w.tenant_id and x.estimate_id = w.estimate_id and x.visit_id <> w.visit_id
                    and not exists (select 1 from invoice_discard d
                      where d.tenant_id = y.tenant_id and d.invoice_id = y.invoice_id))
             where w.visit_id = ? order by w.id desc, l.position""";

    private static final String WAIT = """
            select 1 from estimate where id in (select estimate_id from estimate_work where visit_id = ?)
             order by id for no key update""";

    @Override
    public Optional<Agreed> of(Connection connection, UUID visit) throws SQLException {
        try (PreparedStatement wait = connection.prepareStatement(WAIT)) {
            wait.setObject(1, visit);
            wait.executeQuery();
        }
        try (PreparedStatement select = connection.prepareStatement(AGREED)) {
            select.setObject(1, visit);
            ResultSet row = select.executeQuery();
            List<Line> lines = new ArrayList<>();
            @Nullable Work work = null;
            ContractForm form = ContractForm.SEPARATE;
            while (row.next()) {
                if (work == null) {
                    work = Work.of(row.getString(1));
                    form = ContractForm.of(row.getString(2));
                }
                if (row.getObject(5) != null) {
                    lines.add(line(row));
                }
            }
            return work == null ? Optional.empty() : Optional.of(new Agreed(work, form, lines));
        }
    }

    private static Line line(ResultSet row) throws SQLException {
        String label = row.getString(3);
        return new Line(
                label + "/" + row.getInt(5),
                new Wording(row.getString(6), row.getString(7)),
                new Wording("As accepted, estimate " + label, "Comme acceptée, estimation " + label),
                row.getBigDecimal(8),
                row.getString(9),
                Money.ofMinor(row.getLong(10), row.getString(4)),
                Work.of(row.getString(11)),
                ContractForm.of(row.getString(2)));
    }
}
