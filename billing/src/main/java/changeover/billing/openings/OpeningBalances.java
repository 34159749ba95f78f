package changeover.billing.openings;

import changeover.billing.periods.Periods;
import changeover.contracts.money.Money;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** What is owed from before the take-over, aged from its own day. */
@ApplicationScoped
public class OpeningBalances {

    @Inject
    AgroalDataSource datasource;

    @Inject
    TakeOver takeOver;

    @Inject
    Periods periods;

    /**
     * One debt from before.
     *
     * @param since the day it was owed from, not after the take-over
     * @param words what it was for
     */
    public record Opening(UUID customerId, LocalDate since, Money amount, String words) {}

    public record Kept(UUID id, String customer, Opening opening) {}

    public void add(List<Opening> openings) {
        if (openings.isEmpty()) {
            return;
        }
        LocalDate day = takeOver.dayOrToday();
        takeOver.on(day);
        periods.check(day, "since");
        var rows = ManyRows.into(
                "opening_balance", "customer_id uuid, since date, amount_minor bigint, currency text, words text");
        for (Opening one : openings) {
            if (!one.amount().isPositive()) {
                throw Refusal.of("opening.amount").at("amount").thrown();
            }
            if (one.since().isAfter(day)) {
                throw Refusal.of("opening.after").at("since").thrown();
            }
            var checks = new Checks();
            String words = checks.line("words", one.words());
            checks.orRefuse();
            rows.add(
                    one.customerId(),
                    one.since(),
                    one.amount().minor(),
                    one.amount().currency(),
                    words);
        }
        try (Connection connection = datasource.getConnection()) {
            rows.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("what is owed from before could not be kept", cause);
        }
    }

    /** A slip of the hand is taken away again, while the day of the take-over is not closed. */
    public boolean remove(UUID id) {
        takeOver.day().ifPresent(periods::check);
        try (Connection connection = datasource.getConnection();
                PreparedStatement delete = connection.prepareStatement("delete from opening_balance where id = ?")) {
            delete.setObject(1, id);
            return delete.executeUpdate() > 0;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is owed from before could not be taken away", cause);
        }
    }

    /** The oldest first. */
    public List<Kept> all() {
        List<Kept> all = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select o.id, c.name, o.customer_id, o.since, o.amount_minor, o.currency, o.words
                          from opening_balance o join customer c on c.tenant_id = o.tenant_id and c.id = o.customer_id
                         order by o.since, c.name, o.id""");
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                all.add(new Kept(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        new Opening(
                                row.getObject(3, UUID.class),
                                row.getObject(4, LocalDate.class),
                                Money.ofMinor(row.getLong(5), row.getString(6)),
                                row.getString(7))));
            }
            return all;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is owed from before could not be listed", cause);
        }
    }
}
