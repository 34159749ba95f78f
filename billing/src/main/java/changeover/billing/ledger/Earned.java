package changeover.billing.ledger;

import changeover.billing.ledger.EarnedOn.Plan;
import changeover.billing.ledger.EarnedOn.Span;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;

/** What is earned, prepaid and earned ahead on any day, agreement by agreement. */
@ApplicationScoped
public class Earned {

    /** Lines that are earned on the day they are invoiced. */
    static final String AS_INVOICED = "l.kind <> 'deposit' and (l.kind <> 'plan' or l.agreement_id is null)";

    /** Of these lines the fees, which the journal keeps apart from the work. */
    static final String A_FEE = "l.work is not distinct from 'fee'";

    private static final String INVOICED = """
            select coalesce(sum(m.minor) filter (where not m.fee and m.day >= date_trunc('month', ?::date)), 0)::bigint,
                   coalesce(sum(m.minor) filter (where not m.fee and m.day >= date_trunc('year', ?::date)), 0)::bigint,
                   coalesce(sum(m.minor) filter (where not m.fee), 0)::bigint,
                   coalesce(sum(m.minor) filter (where m.fee and m.day >= date_trunc('month', ?::date)), 0)::bigint,
                   coalesce(sum(m.minor) filter (where m.fee and m.day >= date_trunc('year', ?::date)), 0)::bigint,
                   coalesce(sum(m.minor) filter (where m.fee), 0)::bigint
              from (select s.day, case s.kind when 'credit' then -l.net_minor else l.net_minor end as minor,
                           """ + A_FEE + """
                            as fee
                      from invoice_issue s
                      join invoice_line l on l.tenant_id = s.tenant_id and l.invoice_id = s.invoice_id
                     where s.day <= ? and """ + " " + AS_INVOICED + ") m";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** At the end of the day: agreements that something is invoiced or earned for by then. */
    public EarnedOn on(LocalDate day) {
        Currency currency = businesses.current().currency();
        try (Connection connection = datasource.getConnection()) {
            List<Plan> plans = SoldPlanRows.of(connection, currency).stream()
                    .map(plan -> on(plan, day, currency))
                    .filter(plan -> !plan.invoiced().isZero()
                            || !plan.givenBack().isZero()
                            || !plan.earned().ever().isZero())
                    .toList();
            return invoiced(connection, day, currency, plans);
        } catch (SQLException cause) {
            throw new IllegalStateException("what is earned could not be read", cause);
        }
    }

    private static Plan on(SoldPlan plan, LocalDate day, Currency currency) {
        SoldPlan.Head head = plan.head();
        return new Plan(
                head.id(),
                head.number(),
                head.homeId(),
                head.home(),
                head.customerId(),
                head.customer(),
                head.plan(),
                head.term(),
                plan.endedOn(day) ? plan.ended() : null,
                plan.basis(),
                span(until -> plan.earned(until, currency), day),
                plan.invoiced(day, currency),
                plan.givenBack(day, currency));
    }

    private static Span span(Function<LocalDate, Money> earned, LocalDate day) {
        Money ever = earned.apply(day);
        return new Span(
                ever.minus(earned.apply(day.withDayOfMonth(1).minusDays(1))),
                ever.minus(earned.apply(day.withDayOfYear(1).minusDays(1))),
                ever);
    }

    private static EarnedOn invoiced(Connection connection, LocalDate day, Currency currency, List<Plan> plans)
            throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(INVOICED)) {
            for (int at = 1; at <= 5; at++) {
                select.setObject(at, day);
            }
            ResultSet row = select.executeQuery();
            row.next();
            return new EarnedOn(day, currency, plans, span(row, 1, currency), span(row, 4, currency));
        }
    }

    private static Span span(ResultSet row, int at, Currency currency) throws SQLException {
        return new Span(
                new Money(row.getLong(at), currency),
                new Money(row.getLong(at + 1), currency),
                new Money(row.getLong(at + 2), currency));
    }
}
