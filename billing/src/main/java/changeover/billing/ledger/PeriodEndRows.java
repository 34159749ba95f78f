package changeover.billing.ledger;

import static changeover.billing.ledger.AccountRole.DEFERRED;
import static changeover.billing.ledger.AccountRole.DEPOSITS;
import static changeover.billing.ledger.AccountRole.RECEIVABLE;
import static changeover.billing.ledger.AccountRole.REVENUE_PLAN;
import static changeover.billing.ledger.AccountRole.UNBILLED;

import changeover.billing.ledger.JournalEntry.Posting;
import changeover.billing.payments.KeptCredits;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;

/**
 * What is booked on the last day of a period: what of each plan was earned in it, and what is kept for customers. At a day on
 * which the books were closed, what was earned is what the closing wrote down, so that a closed period says the same for ever.
 */
final class PeriodEndRows {

    private static final String CLOSED = """
            select c.until_day, e.agreement_id, e.invoiced_minor, e.earned_minor
              from earned_at_close e
              join period_close c on c.tenant_id = e.tenant_id and c.id = e.close_id
             where c.until_day in (?, ?) and not exists (
               select 1 from period_reopening r where r.tenant_id = c.tenant_id and r.close_id = c.id)""";

    /** @param earned may be above what is invoiced */
    record State(Money invoiced, Money earned) {

        Money prepaid() {
            return invoiced.minus(earned).aboveNought();
        }

        Money ahead() {
            return earned.minus(invoiced).aboveNought();
        }

        static State of(SoldPlan plan, LocalDate day, Currency currency) {
            return new State(plan.invoiced(day, currency), plan.earned(day, currency));
        }
    }

    private PeriodEndRows() {}

    static List<JournalEntry> earned(Connection connection, Period period, Currency currency) throws SQLException {
        LocalDate before = period.from().minusDays(1);
        Map<LocalDate, Map<UUID, State>> closed = closed(connection, before, period.until(), currency);
        List<JournalEntry> entries = new ArrayList<>();
        for (SoldPlan plan : SoldPlanRows.of(connection, currency)) {
            State was = state(closed, plan, before, currency);
            State is = state(closed, plan, period.until(), currency);
            List<Posting> postings = new ArrayList<>();
            Money invoiced = is.invoiced().minus(was.invoiced());
            add(postings, DEFERRED, invoiced.minus(is.prepaid().minus(was.prepaid())));
            add(postings, UNBILLED, is.ahead().minus(was.ahead()));
            add(postings, REVENUE_PLAN, was.earned().minus(is.earned()));
            if (!postings.isEmpty()) {
                String number = String.valueOf(plan.head().number());
                entries.add(new JournalEntry(
                        period.until(),
                        "",
                        new Wording(
                                "Earned of agreement " + number + ", "
                                        + plan.head().customer(),
                                "Gagné de l’entente " + number + ", "
                                        + plan.head().customer()),
                        null,
                        postings));
            }
        }
        return entries;
    }

    private static State state(
            Map<LocalDate, Map<UUID, State>> closed, SoldPlan plan, LocalDate day, Currency currency) {
        Map<UUID, State> written = closed.get(day);
        if (written == null) {
            return State.of(plan, day, currency);
        }
        Money nought = Money.zero(currency);
        return written.getOrDefault(plan.head().id(), new State(nought, nought));
    }

    private static Map<LocalDate, Map<UUID, State>> closed(
            Connection connection, LocalDate before, LocalDate until, Currency currency) throws SQLException {
        Map<LocalDate, Map<UUID, State>> closed = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(CLOSED)) {
            select.setObject(1, before);
            select.setObject(2, until);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                closed.computeIfAbsent(row.getObject(1, LocalDate.class), day -> new HashMap<>())
                        .put(
                                row.getObject(2, UUID.class),
                                new State(new Money(row.getLong(3), currency), new Money(row.getLong(4), currency)));
            }
        }
        return closed;
    }

    static List<JournalEntry> kept(Connection connection, Period period, Currency currency) throws SQLException {
        Map<UUID, KeptCredits.Kept> was =
                KeptCredits.on(connection, period.from().minusDays(1), currency);
        Map<UUID, KeptCredits.Kept> is = KeptCredits.on(connection, period.until(), currency);
        TreeSet<UUID> customers = new TreeSet<>(was.keySet());
        customers.addAll(is.keySet());
        KeptCredits.Kept nothing = new KeptCredits.Kept("", Money.zero(currency));
        List<JournalEntry> entries = new ArrayList<>();
        for (UUID customer : customers) {
            KeptCredits.Kept then = was.getOrDefault(customer, nothing);
            KeptCredits.Kept now = is.getOrDefault(customer, nothing);
            Money more = now.amount().minus(then.amount());
            if (!more.isZero()) {
                String name = now.customer().isEmpty() ? then.customer() : now.customer();
                entries.add(new JournalEntry(
                        period.until(),
                        "",
                        new Wording("Kept for " + name, "Gardé pour " + name),
                        null,
                        List.of(new Posting(RECEIVABLE.code(), more), new Posting(DEPOSITS.code(), more.negated()))));
            }
        }
        return entries;
    }

    private static void add(List<Posting> postings, AccountRole role, Money amount) {
        if (!amount.isZero()) {
            postings.add(new Posting(role.code(), amount));
        }
    }
}
