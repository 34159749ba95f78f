package changeover.billing.pricing;

import changeover.billing.periods.Periods;
import changeover.billing.pricing.MarkUp.Scope;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The rules behind the prices: mark-ups and how minutes are counted, each from a day on. */
@ApplicationScoped
public class PricingRules {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Periods periods;

    public MarkUps markUps() {
        return read(PriceRows::rules);
    }

    /** A part's or a kind's own mark-up from a day on, or its end; the same day again replaces it. */
    public void set(MarkUp rule) {
        if (rule.scope() == Scope.COST) {
            throw new IllegalArgumentException("rules by cost are written together");
        }
        check(List.of(rule));
        periods.check(rule.from(), "from");
        read(connection -> write(connection, List.of(rule)));
    }

    /** The mark-ups by what a part costs, all together from one day on; the first is for the cheapest part. */
    public void setByCost(List<MarkUp> brackets) {
        check(brackets);
        Set<Long> costs = new HashSet<>();
        for (MarkUp bracket : brackets) {
            if (!costs.add(bracket.costFrom().minor())) {
                throw Refusal.of("mark-up.cost-twice").at("costFrom").thrown();
            }
        }
        if (!costs.contains(0L)) {
            throw Refusal.of("mark-up.from-nought").at("costFrom").thrown();
        }
        LocalDate from = brackets.getFirst().from();
        periods.check(from, "from");
        read(connection -> {
            try (PreparedStatement gone =
                    connection.prepareStatement("delete from mark_up where scope = 'cost' and valid_from = ?")) {
                gone.setObject(1, from);
                gone.executeUpdate();
            }
            return write(connection, brackets);
        });
    }

    /** How minutes are counted from a day on; the same day again replaces it. */
    public void set(LabourTerms terms) {
        Checks checks = new Checks();
        checks.refuseIf(!LabourTerms.STEPS.contains(terms.step()), "step", "labour.step");
        checks.refuseIf(
                terms.minimum() < 0 || terms.minimum() > LabourTerms.LARGEST_MINIMUM, "minimum", "labour.minimum");
        checks.orRefuse();
        read(connection -> {
            try (PreparedStatement insert = connection.prepareStatement("""
                    insert into labour_terms (valid_from, step_minutes, minimum_minutes) values (?, ?, ?)
                    on conflict (tenant_id, valid_from) do update
                      set step_minutes = excluded.step_minutes, minimum_minutes = excluded.minimum_minutes""")) {
                insert.setObject(1, terms.from());
                insert.setInt(2, terms.step());
                insert.setInt(3, terms.minimum());
                return insert.executeUpdate();
            }
        });
    }

    private static void check(List<MarkUp> rules) {
        Checks checks = new Checks();
        for (MarkUp rule : rules) {
            checks.refuseIf(rule.scope() != Scope.COST && rule.item().isBlank(), "item", "mark-up.item");
            checks.refuseIf(
                    rule.percent() != null
                            && (rule.percent().signum() < 0
                                    || rule.percent().intValue() > 2000
                                    || rule.percent().stripTrailingZeros().scale() > 2),
                    "percent",
                    "mark-up.percent");
        }
        checks.orRefuse();
    }

    private static int write(Connection connection, List<MarkUp> rules) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into mark_up (scope, item, valid_from, cost_from_minor, percent, step_minor, currency)
                values (?, ?, ?, ?, ?, ?, ?)
                on conflict (tenant_id, scope, item, valid_from, cost_from_minor) do update
                  set percent = excluded.percent, step_minor = excluded.step_minor""")) {
            for (MarkUp rule : rules) {
                insert.setString(1, rule.scope().code());
                insert.setString(2, rule.item());
                insert.setObject(3, rule.from());
                insert.setLong(4, rule.costFrom().minor());
                insert.setBigDecimal(5, rule.percent());
                insert.setLong(6, rule.step().minor());
                insert.setString(7, rule.step().currency().getCurrencyCode());
                insert.addBatch();
            }
            return insert.executeBatch().length;
        }
    }

    private interface Work<T> {
        T on(Connection connection) throws SQLException;
    }

    private <T> T read(Work<T> work) {
        try (Connection connection = datasource.getConnection()) {
            return work.on(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the rules of prices could not be read or written", cause);
        }
    }
}
