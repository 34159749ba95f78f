package changeover.billing.collection;

import changeover.billing.payments.CustomersTurn;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.billing.reminders.Claiming;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is to be collected up to a day from those who agreed to it, and that it was collected. */
@ApplicationScoped
public class Collecting {

    private static final int BATCH = 100;

    @Inject
    AgroalDataSource datasource;

    @Inject
    EntityManager session;

    @Inject
    OpenByAge open;

    @Inject
    Claiming claiming;

    @Inject
    DebitFacts facts;

    @Inject
    Payments payments;

    @Inject
    Today today;

    @Inject
    CurrentTenant current;

    /**
     * A document to be collected.
     *
     * @param item open is what may be asked for
     * @param instalment which of how many, or null for another document
     * @param debits how often it was collected before
     * @param cameBack whether one of them came back
     */
    public record Due(
            OpenByAge.Item item,
            String mandate,
            @Nullable Integer instalment,
            @Nullable Integer instalments,
            int debits,
            boolean cameBack) {

        /** What the bank is told. */
        public Drawn drawn() {
            return new Drawn(item.open(), debits);
        }
    }

    /**
     * What the bank was told to draw for a document.
     *
     * @param before how often it had been collected when the list was read
     */
    public record Drawn(Money amount, int before) {}

    /** Due first comes first; what a hold keeps back, or money kept for the customer would pay, is not among them. */
    public List<Due> until(LocalDate day) {
        List<OpenByAge.Item> items = claiming.on(today.day()).of(open.on(today.day(), null)).stream()
                .filter(item -> !item.dueDay().isAfter(day))
                .toList();
        Map<UUID, DebitFacts.Facts> known =
                facts.of(items.stream().map(OpenByAge.Item::id).toList());
        return items.stream()
                .filter(item -> known.containsKey(item.id()))
                .map(item -> due(item, Objects.requireNonNull(known.get(item.id()))))
                .toList();
    }

    private static Due due(OpenByAge.Item item, DebitFacts.Facts known) {
        return new Due(
                item, known.mandate(), known.instalment(), known.instalments(), known.debits(), known.cameBack());
    }

    /**
     * Notes these as collected on the day, a payment a document, with what the bank drew: what was paid otherwise meanwhile stays
     * the customer's credit. What somebody has noted since the list was read is left out.
     */
    public int collected(Map<UUID, Drawn> drawn, LocalDate day) {
        lock();
        return note(drawn, facts.of(drawn.keySet()), open.on(today.day(), null), day);
    }

    private int note(
            Map<UUID, Drawn> drawn, Map<UUID, DebitFacts.Facts> known, List<OpenByAge.Item> items, LocalDate day) {
        Map<UUID, Money> left = amounts(items);
        int count = 0;
        for (Map.Entry<UUID, Drawn> one : drawn.entrySet()) {
            DebitFacts.Facts facts = known.get(one.getKey());
            if (facts != null && facts.debits() == one.getValue().before()) {
                take(one.getKey(), one.getValue().amount(), facts, left.get(one.getKey()), day);
                if (++count % BATCH == 0) {
                    session.flush();
                    session.clear();
                }
            }
        }
        if (count == 0) {
            throw Refusal.of("collection.none").thrown();
        }
        return count;
    }

    /**
     * As {@link #collected}, where each was drawn as the list draws it now: what was paid or held back meanwhile is refused. What
     * somebody has noted as collected since is left out here too.
     *
     * @throws changeover.contracts.words.Refused naming the document whose amount the list does not draw
     */
    public int collectedAsListed(Map<UUID, Drawn> drawn, LocalDate day) {
        lock();
        facts.of(drawn.keySet()).values().stream()
                .map(DebitFacts.Facts::customerId)
                .distinct()
                .sorted()
                .forEach(customer -> CustomersTurn.wait(session, customer));
        Map<UUID, DebitFacts.Facts> known = facts.of(drawn.keySet());
        List<OpenByAge.Item> items = open.on(today.day(), null);
        Map<UUID, Money> listed = amounts(claiming.on(today.day()).of(items));
        drawn.forEach((id, one) -> {
            DebitFacts.Facts facts = known.get(id);
            if (facts != null && facts.debits() == one.before()) {
                asListed(facts.label(), one.amount(), listed.get(id));
            }
        });
        return note(drawn, known, items, day);
    }

    private static Map<UUID, Money> amounts(List<OpenByAge.Item> items) {
        return items.stream().collect(Collectors.toMap(OpenByAge.Item::id, OpenByAge.Item::open));
    }

    private static void asListed(String document, Money drawn, @Nullable Money listed) {
        if (listed == null) {
            throw Refusal.of("collection.not-listed", Map.of("document", document))
                    .at("invoices")
                    .thrown();
        }
        if (!listed.equals(drawn)) {
            throw Refusal.of("collection.other-amount", Map.of("document", document, "drawn", drawn, "listed", listed))
                    .at("invoices")
                    .thrown();
        }
    }

    private void take(UUID invoice, Money amount, DebitFacts.Facts facts, @Nullable Money left, LocalDate day) {
        boolean beyond = left == null || left.compareTo(amount) < 0;
        payments.take(new NewPayment(
                facts.customerId(),
                day,
                Way.DEBIT,
                amount,
                facts.mandate(),
                beyond ? facts.label() : null,
                List.of(new NewPayment.Part(invoice, amount))));
    }

    /** One after the other: what somebody else has just collected is not collected again. */
    private void lock() {
        try (Connection connection = datasource.getConnection();
                PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('collecting ' || ?, 0))")) {
            lock.setString(1, current.id().toString());
            lock.executeQuery();
        } catch (SQLException cause) {
            throw new IllegalStateException("collecting could not be held", cause);
        }
    }
}
