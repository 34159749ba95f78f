package changeover.billing.payments;

import changeover.billing.invoices.Foreseen;
import changeover.billing.invoices.Invoices;
import changeover.contracts.money.Money;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Documents that a customer may pay before they are issued: the taxes of such money are those of the day it came, when that is
 * earlier than the document's.
 */
@ApplicationScoped
public class DraftsToPay {

    /** A year of instalments and what was drafted beside them, of those that come next. */
    private static final int MOST = 24;

    private static final int READ = 500;

    @Inject
    InvoiceLists lists;

    @Inject
    Invoices invoices;

    @Inject
    AgroalDataSource datasource;

    /**
     * A draft that could be issued on its day.
     *
     * @param from the first day on which it may be issued
     * @param left with tax, less what was paid of it before
     */
    public record ToPay(UUID id, String street, LocalDate from, Money left) {}

    /** Those of a customer, the next one first. */
    public List<ToPay> of(UUID customer, LocalDate today) {
        var filter =
                new InvoiceFilter(Set.of(Standing.READY, Standing.LATER), customer, null, null, null, null, 0, READ);
        List<InvoiceRow> drafts = lists.rows(filter, today).stream()
                .sorted(Comparator.comparing(InvoiceRow::day))
                .limit(MOST)
                .toList();
        Map<UUID, Money> totals = totals(drafts, today);
        Map<UUID, Long> paid = paid(totals.keySet());
        List<ToPay> toPay = new ArrayList<>();
        for (InvoiceRow draft : drafts) {
            Money total = totals.get(draft.id());
            if (total != null) {
                Money left = total.minus(new Money(paid.getOrDefault(draft.id(), 0L), total.currency()));
                if (left.isPositive()) {
                    toPay.add(new ToPay(draft.id(), draft.street(), draft.day(), left));
                }
            }
        }
        toPay.sort(Comparator.comparing(ToPay::from).thenComparing(ToPay::id));
        return toPay;
    }

    /** Each reckoned on the first day on which it may be issued. */
    private Map<UUID, Money> totals(List<InvoiceRow> drafts, LocalDate today) {
        Map<LocalDate, List<UUID>> days = drafts.stream()
                .collect(Collectors.groupingBy(
                        draft -> draft.day().isAfter(today) ? draft.day() : today,
                        Collectors.mapping(InvoiceRow::id, Collectors.toList())));
        Map<UUID, Money> totals = new HashMap<>();
        days.forEach((day, ids) -> {
            Foreseen foreseen = invoices.foresee(ids, day);
            totals.putAll(foreseen.totals());
        });
        return totals;
    }

    private Map<UUID, Long> paid(Set<UUID> drafts) {
        Map<UUID, Long> paid = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select a.invoice_id, sum(a.amount_minor)::bigint
                          from payment_allocation a
                          left join payment_undoing u on u.tenant_id = a.tenant_id and u.payment_id = a.payment_id
                         where a.invoice_id = any (?) and u.id is null group by a.invoice_id""")) {
            select.setArray(1, connection.createArrayOf("uuid", drafts.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                paid.put(Objects.requireNonNull(row.getObject(1, UUID.class)), row.getLong(2));
            }
            return paid;
        } catch (SQLException cause) {
            throw new IllegalStateException("what was paid of drafts could not be read", cause);
        }
    }
}
