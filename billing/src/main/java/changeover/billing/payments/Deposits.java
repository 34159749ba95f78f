package changeover.billing.payments;

import changeover.billing.periods.Periods;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A deposit pays nothing before it is applied to the invoice of its work, by a person or as that of its estimate is issued; until then it is the customer's money and bears
 * no tax (Excise Tax Act, s. 168(9), from memory: a deposit is no payment of the price until it is applied as one).
 */
@ApplicationScoped
public class Deposits {

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    @Inject
    Owed owed;

    @Inject
    Periods periods;

    @Inject
    Today today;

    @Inject
    DepositWork work;

    @Inject
    Event<DepositTaken> kept;

    /** @throws changeover.contracts.words.Refused for nothing, without what it is for, for a day to come or closed, for work elsewhere */
    public UUID take(NewDeposit taken) {
        check(taken.day());
        if (taken.words().isBlank()) {
            throw Refusal.of("deposit.words").at("words").thrown();
        }
        work.refusal(taken).ifPresent(refusal -> {
            throw refusal.thrown();
        });
        CustomersTurn.wait(session, taken.customerId());
        NewPayment money = new NewPayment(
                taken.customerId(), taken.day(), taken.way(), taken.amount(), taken.reference(), null, List.of());
        Payment row =
                Payment.taken(money, taken.amount(), Money.zero(taken.amount().currency()));
        session.persist(row);
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            UUID id = DepositRows.insert(connection, row.id(), taken);
            kept.fire(new DepositTaken(id, taken.customerId(), taken.homeId(), taken.day(), taken.amount()));
            return id;
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposit could not be kept", cause);
        }
    }

    private void check(LocalDate day) {
        if (day.isAfter(today.day())) {
            throw Refusal.of("payment.day-to-come").at("day").thrown();
        }
        periods.check(day);
    }

    /**
     * Pays an issued invoice of the same customer from the deposit.
     *
     * @param amount null for as much as the deposit has left and the invoice has open
     * @throws changeover.contracts.words.Refused beyond what is left or open, or for somebody else's invoice
     */
    public Money apply(UUID id, UUID invoice, LocalDate day, @Nullable Money amount) {
        check(day);
        Deposit deposit = mine(id, day);
        Money open = open(deposit, invoice, day);
        Money left = left(deposit, day);
        Money part = amount == null ? least(left, open) : amount;
        within(part, left, "deposit.beyond-left");
        within(part, open, "deposit.beyond-open");
        pay(deposit, invoice, part, day);
        return part;
    }

    /** As {@link #apply} of as much as there is; where nothing is left or open, nothing happens. */
    public void useUp(UUID id, UUID invoice, LocalDate day) {
        Deposit deposit = mine(id, day);
        Money part = least(left(deposit, day), open(deposit, invoice, day));
        if (part.isPositive()) {
            pay(deposit, invoice, part, day);
        }
    }

    private Money open(Deposit deposit, UUID invoice, LocalDate day) {
        OpenItem item = owed.item(invoice, day)
                .filter(one -> one.customerId().equals(deposit.customerId()))
                .orElseThrow(
                        () -> Refusal.of("payment.not-theirs").at("invoice").thrown());
        return least(
                item.open(), owed.item(invoice, today.day()).map(OpenItem::open).orElse(item.open()));
    }

    private void pay(Deposit deposit, UUID invoice, Money part, LocalDate day) {
        session.persist(Allocation.of(deposit.paymentId(), invoice, part, day));
        session.flush();
    }

    /** Money of the deposit that goes back to the customer; never more than is left. */
    public UUID giveBack(UUID id, LocalDate day, Way way, Money amount, @Nullable String reference) {
        check(day);
        Deposit deposit = mine(id, day);
        within(amount, left(deposit, day), "deposit.beyond-left");
        NewRefund refund = new NewRefund(deposit.customerId(), day, way, amount, reference, deposit.words());
        Payment row = Payment.refunded(refund, amount, Money.zero(amount.currency()));
        session.persist(row);
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            DepositRows.returned(connection, id, row.id());
            return row.id();
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposit could not be given back", cause);
        }
    }

    /** Where a credit note lessened what these customers' deposits paid, the surplus is the deposits' again. */
    void free(Map<UUID, LocalDate> credited) {
        try (Connection connection = datasource.getConnection()) {
            for (UUID customer : DepositRows.having(connection, credited.keySet())) {
                CustomersTurn.wait(session, customer);
                Settling.release(connection, customer, Objects.requireNonNull(credited.get(customer)));
                Settling.release(connection, customer, today.day());
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposits could not be freed", cause);
        }
    }

    private Deposit mine(UUID id, LocalDate day) {
        Deposit found = of(id).orElseThrow(() -> Refusal.of("deposit.not-found").thrown());
        CustomersTurn.wait(session, found.customerId());
        if (day.isBefore(found.day())) {
            throw Refusal.of("deposit.before-its-day").at("day").thrown();
        }
        return of(id).orElseThrow();
    }

    /** What is left and was left all the time from the day on: no day shows more of a deposit used than came in. */
    private Money left(Deposit deposit, LocalDate day) {
        try (Connection connection = datasource.getConnection()) {
            return least(deposit.left(), DepositRows.leastFrom(connection, deposit, day));
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposit could not be read", cause);
        }
    }

    private static void within(Money part, Money most, String code) {
        if (!part.isPositive()) {
            throw Refusal.of("payment.nothing").at("amount").thrown();
        }
        if (part.compareTo(most) > 0) {
            throw Refusal.of(code, Map.of("most", most)).at("amount").thrown();
        }
    }

    private static Money least(Money one, Money other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    public Optional<Deposit> of(UUID id) {
        return read("s.id = ?", id).stream().findFirst();
    }

    /** These, as they stand. */
    public List<Deposit> those(Collection<UUID> ids) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return DepositRows.read(
                    connection,
                    businesses.current().currency(),
                    "s.id = any (?)",
                    connection.createArrayOf("uuid", ids.toArray()));
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposits could not be read", cause);
        }
    }

    public List<Deposit> ofCustomer(UUID customer) {
        return read("s.customer_id = ?", customer);
    }

    /** All of them, the oldest first. */
    public List<Deposit> all() {
        return read("true");
    }

    private List<Deposit> read(String where, Object... asked) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return DepositRows.read(connection, businesses.current().currency(), where, asked);
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposits could not be read", cause);
        }
    }
}
