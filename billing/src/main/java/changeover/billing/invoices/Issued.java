package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Locales;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Issued documents read back from their frozen rows. */
@ApplicationScoped
class Issued {

    @Inject
    AgroalDataSource datasource;

    @Inject
    InvoiceRows rows;

    private record Head(
            IssueRow issue,
            @Nullable UUID agreementId,
            @Nullable UUID visitId,
            @Nullable String creditsLabel,
            long paidBefore) {}

    List<InvoiceView> views(Collection<UUID> ids) {
        try (Connection connection = datasource.getConnection()) {
            List<Head> heads = heads(connection, ids);
            Map<UUID, List<LineRow>> lines =
                    rows.lines(connection, ids).stream().collect(Collectors.groupingBy(LineRow::invoiceId));
            Map<UUID, List<PrintedTax>> taxes =
                    rows.taxes(connection, ids).stream().collect(Collectors.groupingBy(PrintedTax::invoiceId));
            return heads.stream()
                    .map(head -> view(
                            head,
                            lines.getOrDefault(head.issue().invoiceId(), List.of()),
                            taxes.getOrDefault(head.issue().invoiceId(), List.of())))
                    .toList();
        } catch (SQLException cause) {
            throw new IllegalStateException("the documents could not be read", cause);
        }
    }

    private static List<Head> heads(Connection connection, Collection<UUID> ids) throws SQLException {
        List<Head> heads = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("select " + IssueRow.COLUMNS + """
                , i.agreement_id, i.visit_id, o.label, coalesce(p.amount_minor, 0)
                  from invoice_issue s
                  join invoice i on i.tenant_id = s.tenant_id and i.id = s.invoice_id
                  left join invoice_issue o on o.tenant_id = s.tenant_id and o.invoice_id = s.credits_id
                  left join paid_before p on p.tenant_id = s.tenant_id and p.invoice_id = s.invoice_id
                 where s.invoice_id = any (?)
                 order by s.series, s.number""")) {
            select.setArray(1, InvoiceRows.uuids(connection, ids));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                heads.add(new Head(
                        IssueRow.of(row),
                        row.getObject(IssueRow.WIDTH + 1, UUID.class),
                        row.getObject(IssueRow.WIDTH + 2, UUID.class),
                        row.getString(IssueRow.WIDTH + 3),
                        row.getLong(IssueRow.WIDTH + 4)));
            }
        }
        return heads;
    }

    private static InvoiceView view(Head head, List<LineRow> lines, List<PrintedTax> taxes) {
        IssueRow issue = head.issue();
        Currency currency = Currency.getInstance(issue.currency());
        BusinessTerms terms = issue.terms();
        return new InvoiceView(
                issue.invoiceId(),
                DocumentKind.of(issue.kind()),
                issue.label(),
                issue.creditsId(),
                head.creditsLabel(),
                issue.day(),
                issue.taxDay(),
                issue.dueDay(),
                issue.customerId(),
                issue.homeId(),
                head.agreementId(),
                head.visitId(),
                Locales.of(issue.language()),
                currency,
                Json.read(issue.seller(), Seller.class),
                Json.read(issue.buyer(), Buyer.class),
                Json.works(issue.works()),
                issue.purchaseOrder(),
                terms == null ? null : terms.buyerReference(),
                issue.reason(),
                terms == null ? null : terms.untaxed(),
                lines.stream().map(line -> line.view(currency)).toList(),
                taxes.stream().map(tax -> tax.view(currency)).toList(),
                new Money(issue.subtotalMinor(), currency),
                new Money(issue.taxMinor(), currency),
                new Money(issue.totalMinor(), currency),
                new Money(head.paidBefore(), currency));
    }
}
