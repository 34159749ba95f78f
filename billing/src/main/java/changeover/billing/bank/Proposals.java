package changeover.billing.bank;

import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
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
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What each waiting line may be, as everything stands now: four questions to the database, whatever their number. */
@ApplicationScoped
public class Proposals {

    /** A cheque or a debit may come back so many days later. */
    private static final int LOOKS_BACK = 120;

    @Inject
    AgroalDataSource datasource;

    @Inject
    BankLines lines;

    @Inject
    OpenByAge open;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** What lines are matched with, read once: what one of them was said to be is there for no other. */
    final class AsItStands {

        private final List<OpenByAge.Item> items = new ArrayList<>(open.on(today.day(), null));
        private final List<Matching.Noted> noted = new ArrayList<>(noted());
        private final Map<String, UUID> payers = payers();
        private final Map<UUID, String> names = names(items, noted);
        private final PlainWords plain = new PlainWords();

        private AsItStands() {}

        Optional<Proposal> of(BankLine line) {
            return new Matching(items, noted, payers, names, plain).of(line);
        }

        void used(Proposal one) {
            Set<UUID> paid =
                    one.invoices().stream().map(Proposal.Target::invoiceId).collect(Collectors.toSet());
            items.removeIf(item -> paid.contains(item.id()));
            noted.removeIf(payment -> one.paymentId().contains(payment.paymentId()));
        }
    }

    AsItStands asItStands() {
        return new AsItStands();
    }

    /** Every waiting line with its proposal, where there is one; no document is proposed for two lines. */
    public Map<BankLine, Optional<Proposal>> waiting(int most) {
        Map<BankLine, Optional<Proposal>> proposals = new LinkedHashMap<>();
        AsItStands now = asItStands();
        for (BankLine line : lines.waiting(most)) {
            Optional<Proposal> proposal = now.of(line);
            proposals.put(line, proposal);
            proposal.filter(Proposal::sure).ifPresent(now::used);
        }
        return proposals;
    }

    public Optional<Proposal> of(BankLine line) {
        return asItStands().of(line);
    }

    private Map<UUID, String> names(List<OpenByAge.Item> items, List<Matching.Noted> noted) {
        Map<UUID, String> names = new HashMap<>();
        items.forEach(item -> names.put(item.customerId(), item.customer()));
        List<UUID> others = noted.stream()
                .map(Matching.Noted::customerId)
                .filter(id -> !names.containsKey(id))
                .distinct()
                .toList();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select =
                        connection.prepareStatement("select id, name from customer where id = any (?)")) {
            select.setArray(1, connection.createArrayOf("uuid", others.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                names.put(row.getObject(1, UUID.class), row.getString(2));
            }
            return names;
        } catch (SQLException cause) {
            throw new IllegalStateException("the names could not be read", cause);
        }
    }

    private List<Matching.Noted> noted() {
        Currency currency = businesses.current().currency();
        List<Matching.Noted> noted = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select p.id, p.customer_id, p.day, p.amount_minor, coalesce(p.reference, ''), u.id is not null, p.way, p.made_at
                          from payment p
                          left join payment_undoing x on x.tenant_id = p.tenant_id and x.payment_id = p.id
                          left join bank_line_use u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                         where p.kind = 'payment' and p.way <> 'cash' and x.id is null and p.day >= ?
                         order by p.day, p.id""")) {
            select.setObject(1, today.day().minusDays(LOOKS_BACK));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                noted.add(new Matching.Noted(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        row.getObject(3, LocalDate.class),
                        new Money(row.getLong(4), currency),
                        row.getString(5),
                        row.getBoolean(6),
                        Way.of(row.getString(7)),
                        row.getTimestamp(8).toInstant()));
            }
            return noted;
        } catch (SQLException cause) {
            throw new IllegalStateException("the payments could not be read", cause);
        }
    }

    /** Words that only one customer paid with. */
    private Map<String, UUID> payers() {
        Map<String, UUID> payers = new HashMap<>();
        List<String> shared = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select distinct l.words, p.customer_id
                          from bank_line_use u
                          join bank_line l on l.tenant_id = u.tenant_id and l.id = u.line_id
                          join payment p on p.tenant_id = u.tenant_id and p.id = u.payment_id
                          left join payment_undoing x on x.tenant_id = p.tenant_id and x.payment_id = p.id
                         where u.how <> 'returned' and x.id is null""")) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                String words = Matching.payerWords(row.getString(1));
                UUID customer = row.getObject(2, UUID.class);
                UUID before = payers.putIfAbsent(words, customer);
                if (before != null && !before.equals(customer)) {
                    shared.add(words);
                }
            }
            shared.forEach(payers::remove);
            payers.remove("");
            return payers;
        } catch (SQLException cause) {
            throw new IllegalStateException("who paid before could not be read", cause);
        }
    }
}
