package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What is earned of hundreds of agreements is read by as many statements as of one. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HundredsOfPlansTest {

    static final Currency CAD = Currency.getInstance("CAD");
    static final int MANY = 400;

    @Inject
    ABusiness business;

    @Inject
    AgroalDataSource datasource;

    @Test
    void four_hundred_agreements_take_ten_statements() {
        business.in(business.quebec(), () -> {
            sold();
            AtomicInteger statements = new AtomicInteger();
            List<SoldPlan> plans = read(statements);
            assertEquals(10, statements.get());
            assertEquals(MANY, plans.size());
            LocalDate day = LocalDate.of(2026, 12, 31);
            assertEquals(
                    MANY * 12_450L,
                    plans.stream()
                            .mapToLong(plan -> plan.earned(day, CAD).minor())
                            .sum());
        });
    }

    private void sold() {
        UUID customer = business.customer("Ida Roe");
        UUID home = business.home(customer, "QC");
        business.execute(
                "insert into plan (code, name_en, name_fr, visits, price_minor, currency) values ('two', 'Two',"
                        + " 'Deux', 2, 24900, 'CAD')");
        business.execute(
                "insert into agreement (number, home_id, signer_id, payer_id, plan_id, plan_code, plan_name_en,"
                        + " plan_name_fr, term_from, term_until, price_minor, currency, instalments, visits, discount_percent,"
                        + " included_minutes, language, offered_on, valid_until) select n, '" + home + "', '" + customer
                        + "', '"
                        + customer
                        + "', (select id from plan), 'two', 'Two', 'Deux', '2026-04-01', '2027-04-01', 24900, 'CAD', 1,"
                        + " 2, 0, 0, 'fr', '2026-04-01', '2026-04-01' from generate_series(1, " + MANY + ") n");
        business.execute(
                "insert into agreement_acceptance (agreement_id, day, by_name, channel) select id, '2026-04-01',"
                        + " 'Ida Roe', 'counter' from agreement");
        business.execute("insert into visit (home_id, agreement_id, kind, window_from, window_until, minutes) select '"
                + home + "', id, 'plan', make_date(2026, month, 1), make_date(2026, month, 28), 40 from agreement,"
                + " unnest(array[5, 10]) month");
        business.execute("insert into visit_task (visit_id, task_code, wording_en, wording_fr, who, minutes, due_from,"
                + " due_until, reason_en, reason_fr, basis, position) select id, 'task-' || n, 'Task', 'Tâche',"
                + " 'technician', 20, window_from, window_until, 'Plan', 'Formule', 'maker', n from visit,"
                + " generate_series(1, 2) n");
        business.execute("insert into visit_ending (visit_id, how, day) select id, 'closed', window_from from visit"
                + " where window_from < '2026-06-01'");
        business.execute(
                "insert into invoice (kind, customer_id, home_id, agreement_id, instalment, instalments, language,"
                        + " currency, may_issue_from, due_days, subtotal_minor) select 'plan', '" + customer + "', '"
                        + home
                        + "', id, 1, 1, 'fr', 'CAD', '2026-04-01', 30, 24900 from agreement");
        business.execute(
                "insert into invoice_line (invoice_id, position, home_id, agreement_id, day, kind, coverage, work,"
                        + " contract_form, words_en, words_fr, why_en, why_fr, quantity, unit, unit_price_minor, net_minor) select"
                        + " id, 1, home_id, agreement_id, '2026-04-01', 'plan', 'billable', 'maintenance', 'plan', 'Plan',"
                        + " 'Formule', '', '', 1, 'C62', 24900, 24900 from invoice");
    }

    private List<SoldPlan> read(AtomicInteger statements) {
        try (Connection connection = datasource.getConnection()) {
            Connection counting = (Connection) Proxy.newProxyInstance(
                    getClass().getClassLoader(), new Class<?>[] {Connection.class}, (_, method, arguments) -> {
                        statements.incrementAndGet();
                        try {
                            return method.invoke(connection, arguments);
                        } catch (InvocationTargetException failure) {
                            throw failure.getCause();
                        }
                    });
            return SoldPlanRows.of(counting, CAD);
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
