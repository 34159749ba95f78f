package changeover.billing.notices;

import changeover.billing.documents.DayInPaper;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceIssued;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Every issued invoice and credit note goes to whoever pays, with its paper. */
@ApplicationScoped
class WhenInvoiceIssued {

    @Inject
    Recipients recipients;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    @Inject
    AgroalDataSource database;

    /** @param paid before it was issued */
    private record Terms(LocalDate due, Money paid) {}

    void write(@Observes InvoiceIssued issued) {
        Map<UUID, Recipient> payers = recipients.of(
                issued.issued().stream().map(InvoiceIssued.Issued::customerId).toList());
        Map<UUID, Terms> terms = terms(issued);
        String business = businesses.current().name();
        String phone = businesses.profile().facts().phone();
        List<NewMessage> messages = new ArrayList<>();
        for (InvoiceIssued.Issued one : issued.issued()) {
            Recipient payer = payers.get(one.customerId());
            if (payer != null) {
                messages.add(message(one, payer, terms.get(one.invoiceId()), business, phone));
            }
        }
        outbox.write(messages);
    }

    private static NewMessage message(
            InvoiceIssued.Issued one, Recipient payer, @Nullable Terms terms, String business, @Nullable String phone) {
        boolean credit = one.kind() == DocumentKind.CREDIT;
        Locale locale = Locales.of(one.language());
        Map<String, Object> facts = new HashMap<>();
        facts.put("label", one.label());
        facts.put("total", one.total().format(locale));
        facts.put("day", DayInPaper.of(one.day(), locale));
        facts.put("due", terms == null ? "" : DayInPaper.of(terms.due(), locale));
        Money paid = terms == null ? Money.zero(one.total().currency()) : terms.paid();
        facts.put("paid", paid.format(locale));
        facts.put("left", one.total().minus(paid).format(locale));
        String key = credit ? "credit" : "invoice";
        LetterText text = LetterText.of(
                one.language(),
                key + ".subject",
                credit ? "credit.body" : body(one.total(), terms),
                payer.name(),
                business,
                phone,
                facts);
        PaperKind paper = credit ? PaperKind.CREDIT : PaperKind.INVOICE;
        return new NewMessage(
                key,
                one.invoiceId(),
                1,
                one.homeId(),
                payer.in(one.language()),
                text.subject(),
                text.body(),
                List.of(Wanted.of(paper, one.invoiceId())));
    }

    /** What is asked for: all of it, the rest of it, or nothing. */
    private static String body(Money total, @Nullable Terms terms) {
        if (total.isZero() || terms == null) {
            return "invoice.paid-body";
        }
        if (terms.paid().isZero()) {
            return "invoice.body";
        }
        return terms.paid().compareTo(total) < 0 ? "invoice.part-body" : "invoice.settled-body";
    }

    private Map<UUID, Terms> terms(InvoiceIssued issued) {
        Map<UUID, Terms> terms = new HashMap<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select s.invoice_id, s.due_day, coalesce(p.amount_minor, 0), s.currency
                          from invoice_issue s
                          left join paid_before p on p.tenant_id = s.tenant_id and p.invoice_id = s.invoice_id
                         where s.tenant_id = current_tenant() and s.invoice_id = any(?::uuid[])""")) {
            Object[] ids = issued.issued().stream()
                    .map(one -> one.invoiceId().toString())
                    .toArray();
            select.setArray(1, connection.createArrayOf("uuid", ids));
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    LocalDate due = row.getObject(2, LocalDate.class);
                    if (due != null) {
                        terms.put(row.getObject(1, UUID.class), new Terms(due, money(row)));
                    }
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return terms;
    }

    private static Money money(ResultSet row) throws SQLException {
        return new Money(row.getLong(3), Currency.getInstance(row.getString(4)));
    }
}
