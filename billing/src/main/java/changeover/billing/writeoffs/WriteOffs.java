package changeover.billing.writeoffs;

import changeover.billing.payments.CustomersTurn;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.billing.periods.Periods;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Debts given up, whole or in part, never more than is open; each is a dated row with its person and its reason. */
@ApplicationScoped
public class WriteOffs {

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

    /**
     * Gives up what is open of an issued invoice, or a part of it.
     *
     * @param amount taxes in; null for all that is open
     * @throws changeover.contracts.words.Refused beyond what is open on the day or today, for a day to come or closed
     */
    public UUID giveUp(UUID invoice, LocalDate day, @Nullable Money amount, String why) {
        check(day, why);
        OpenItem item = owed.item(invoice, today.day())
                .orElseThrow(() -> Refusal.of("write-off.not-issued").thrown());
        CustomersTurn.wait(session, item.customerId());
        if (day.isBefore(item.day())) {
            throw Refusal.of("write-off.before-its-day").at("day").thrown();
        }
        Money open = least(open(invoice, day), open(invoice, today.day()));
        Money given = amount == null ? open : amount;
        if (!given.isPositive()) {
            throw Refusal.of("write-off.nothing").at("amount").thrown();
        }
        if (given.compareTo(open) > 0) {
            throw Refusal.of("write-off.beyond-open", Map.of("open", open))
                    .at("amount")
                    .thrown();
        }
        try (Connection connection = datasource.getConnection()) {
            return WriteOffRows.insert(
                    connection, new WriteOffRows.Move(invoice, day, given, why.strip(), null, null, null));
        } catch (SQLException cause) {
            throw new IllegalStateException("the debt could not be given up", cause);
        }
    }

    /** Whether it is an invoice that was issued. */
    public boolean mayBeGivenUp(UUID invoice) {
        return owed.item(invoice, today.day()).isPresent();
    }

    private void check(LocalDate day, String why) {
        if (day.isAfter(today.day())) {
            throw Refusal.of("write-off.day-to-come").at("day").thrown();
        }
        if (why.strip().length() < 3) {
            throw Refusal.of("write-off.why").at("why").thrown();
        }
        periods.check(day);
    }

    private Money open(UUID invoice, LocalDate day) {
        return owed.item(invoice, day)
                .map(OpenItem::open)
                .orElseGet(() -> Money.zero(businesses.current().currency()));
    }

    private static Money least(Money one, Money other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    /** It was given up too soon: what still stands of it is open again from the day on. */
    public void takeBack(UUID id, LocalDate day, String why) {
        check(day, why);
        WriteOff given =
                of(id).orElseThrow(() -> Refusal.of("write-off.not-found").thrown());
        CustomersTurn.wait(session, given.customerId());
        if (day.isBefore(given.day())) {
            throw Refusal.of("write-off.taken-back-before").at("day").thrown();
        }
        try (Connection connection = datasource.getConnection()) {
            Money left = left(connection, given);
            if (!left.isPositive()) {
                throw Refusal.of("write-off.taken-back-already").thrown();
            }
            WriteOffRows.insert(
                    connection,
                    new WriteOffRows.Move(given.invoiceId(), day, left.negated(), why.strip(), id, null, null));
        } catch (SQLException cause) {
            throw new IllegalStateException("the debt could not be opened again", cause);
        }
    }

    private static Money left(Connection connection, WriteOff given) throws SQLException {
        return WriteOffRows.standing(
                        connection, given.invoiceId(), given.amount().currency())
                .stream()
                .filter(one -> one.id().equals(given.id()))
                .map(WriteOffRows.Standing::left)
                .findFirst()
                .orElseGet(() -> Money.zero(given.amount().currency()));
    }

    public Optional<WriteOff> of(UUID id) {
        return read("w.id = ?", id).stream().findFirst();
    }

    /** What was given up and taken back of a document, in the order of the days. */
    public List<WriteOff> ofInvoice(UUID invoice) {
        return read("w.invoice_id = ?", invoice);
    }

    /** What was given up and taken back in a period, in the order of the days; the last day is in. */
    public List<WriteOff> between(LocalDate from, LocalDate until) {
        return read("w.day between ? and ?", from, until);
    }

    /** What was given up in a period less what was taken back in it, and the part of the taxes. */
    public record Sum(Money amount, Money tax) {}

    /** The last day is in. */
    public Sum sum(LocalDate from, LocalDate until) {
        Currency currency = businesses.current().currency();
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return WriteOffRows.sum(connection, from, until, currency);
        } catch (SQLException cause) {
            throw new IllegalStateException("what was given up could not be read", cause);
        }
    }

    private List<WriteOff> read(String where, Object... asked) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return WriteOffRows.read(connection, where, businesses.current().currency(), asked);
        } catch (SQLException cause) {
            throw new IllegalStateException("what was given up could not be read", cause);
        }
    }
}
