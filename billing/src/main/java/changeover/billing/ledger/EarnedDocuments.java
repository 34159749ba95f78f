package changeover.billing.ledger;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;

/** The documents whose lines are earned as they are invoiced: every line that is neither a plan's nor a deposit. */
@ApplicationScoped
public class EarnedDocuments {

    private static final String DOCUMENTS = """
            select s.invoice_id, s.label, s.day, s.customer_id, coalesce(c.name, ''), s.kind = 'credit',
                   sum(case s.kind when 'credit' then -l.net_minor else l.net_minor end)::bigint
              from invoice_issue s
              join invoice_line l on l.tenant_id = s.tenant_id and l.invoice_id = s.invoice_id
              left join customer c on c.tenant_id = s.tenant_id and c.id = s.customer_id
             where s.day between ? and ? and (""" + Earned.A_FEE + ") = ? and " + Earned.AS_INVOICED + """
             group by s.invoice_id, s.label, s.day, s.customer_id, c.name, s.kind, s.series, s.number
            having sum(l.net_minor) <> 0 order by s.day, s.series, s.number""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** @param net before tax, below nought for a credit note */
    public record Document(
            UUID id, String label, LocalDate day, UUID customerId, String customer, boolean credit, Money net) {}

    /** What the lines are for. */
    public enum What {
        VISITS,
        FEES
    }

    /** @param until the last day, in */
    public List<Document> between(LocalDate from, LocalDate until, What what) {
        Currency currency = businesses.current().currency();
        List<Document> documents = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(DOCUMENTS)) {
            select.setObject(1, from);
            select.setObject(2, until);
            select.setBoolean(3, what == What.FEES);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                documents.add(new Document(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getObject(3, LocalDate.class),
                        row.getObject(4, UUID.class),
                        row.getString(5),
                        row.getBoolean(6),
                        new Money(row.getLong(7), currency)));
            }
            return documents;
        } catch (SQLException cause) {
            throw new IllegalStateException("the documents could not be read", cause);
        }
    }
}
