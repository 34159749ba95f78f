package changeover.billing.runs;

import changeover.billing.invoices.Foreseen;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.Standing;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** Looks at what a run would do before anybody begins it: the same judgement as issuing, and nothing is written. */
@ApplicationScoped
public class RunPreviews {

    private static final int MOST_WAITING = 500;

    @Inject
    InvoiceLists lists;

    @Inject
    Invoices invoices;

    @Inject
    RunDays days;

    @Inject
    AgroalDataSource database;

    private record Payer(UUID draft, UUID customerId, String name, boolean mail) {}

    /** @throws changeover.contracts.words.Refused when there can be no run on that day */
    public RunPreview on(LocalDate day) {
        days.check(day);
        List<UUID> ids = new ArrayList<>(lists.ready(day));
        lists.rows(InvoiceFilter.standing(Standing.AWAITING, Standing.UNPRICED).page(0, MOST_WAITING), day).stream()
                .filter(row -> !row.day().isAfter(day))
                .map(InvoiceRow::id)
                .forEach(ids::add);
        Foreseen foreseen = invoices.foresee(ids, day);
        List<RunPreview.Odd> refused = new ArrayList<>();
        List<RunPreview.Odd> withoutMail = new ArrayList<>();
        for (Payer payer : payers(ids)) {
            Refusal why = foreseen.refused().get(payer.draft());
            if (why != null) {
                refused.add(new RunPreview.Odd(payer.draft(), payer.customerId(), payer.name(), why));
            } else if (!payer.mail()) {
                withoutMail.add(new RunPreview.Odd(payer.draft(), payer.customerId(), payer.name(), null));
            }
        }
        return new RunPreview(
                day, foreseen.totals().size(), sums(foreseen.totals().values()), refused, withoutMail);
    }

    static List<Money> sums(Collection<Money> amounts) {
        Map<String, Money> sums = new TreeMap<>();
        amounts.forEach(one -> sums.merge(one.currency().getCurrencyCode(), one, Money::plus));
        return List.copyOf(sums.values());
    }

    private List<Payer> payers(List<UUID> ids) {
        List<Payer> payers = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select i.id, c.id, c.name, coalesce(trim(c.email), '') <> ''
                          from unnest(?::uuid[]) with ordinality as d(id, position)
                          join invoice i on i.tenant_id = current_tenant() and i.id = d.id
                          join customer c on c.tenant_id = i.tenant_id and c.id = i.customer_id
                         order by d.position""")) {
            select.setArray(1, connection.createArrayOf("uuid", ids.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                payers.add(new Payer(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        row.getString(3),
                        row.getBoolean(4)));
            }
            return payers;
        } catch (SQLException cause) {
            throw new IllegalStateException("the payers could not be read", cause);
        }
    }
}
