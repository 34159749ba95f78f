package changeover.billing.notices;

import changeover.billing.documents.DayInPaper;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceIssued;
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

    void write(@Observes InvoiceIssued issued) {
        Map<UUID, Recipient> payers = recipients.of(
                issued.issued().stream().map(InvoiceIssued.Issued::customerId).toList());
        Map<UUID, LocalDate> dues = dues(issued);
        String business = businesses.current().name();
        String phone = businesses.profile().facts().phone();
        List<NewMessage> messages = new ArrayList<>();
        for (InvoiceIssued.Issued one : issued.issued()) {
            Recipient payer = payers.get(one.customerId());
            if (payer != null) {
                messages.add(message(one, payer, dues.get(one.invoiceId()), business, phone));
            }
        }
        outbox.write(messages);
    }

    private static NewMessage message(
            InvoiceIssued.Issued one,
            Recipient payer,
            @Nullable LocalDate due,
            String business,
            @Nullable String phone) {
        boolean credit = one.kind() == DocumentKind.CREDIT;
        Locale locale = Locales.of(one.language());
        Map<String, Object> facts = new HashMap<>();
        facts.put("label", one.label());
        facts.put("total", one.total().format(locale));
        facts.put("day", DayInPaper.of(one.day(), locale));
        facts.put("due", due == null ? "" : DayInPaper.of(due, locale));
        String key = credit ? "credit" : "invoice";
        boolean nothing = !credit && (one.total().isZero() || due == null);
        LetterText text = LetterText.of(
                one.language(),
                key + ".subject",
                nothing ? "invoice.paid-body" : key + ".body",
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

    private Map<UUID, LocalDate> dues(InvoiceIssued issued) {
        Map<UUID, LocalDate> dues = new HashMap<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("select invoice_id, due_day from invoice_issue"
                        + " where tenant_id = current_tenant() and invoice_id = any(?::uuid[])")) {
            Object[] ids = issued.issued().stream()
                    .map(one -> one.invoiceId().toString())
                    .toArray();
            select.setArray(1, connection.createArrayOf("uuid", ids));
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    dues.put(row.getObject(1, UUID.class), row.getObject(2, LocalDate.class));
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return dues;
    }
}
