package changeover.billing.openings;

import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refused;
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

/**
 * What a customer had paid ahead before the take-over is kept for them from that day on: it came into the old books, and pays
 * what is issued here.
 */
@ApplicationScoped
public class Prepaid {

    private static final String STANDING = """
            select p.id, c.name, p.customer_id, p.day, p.amount_minor, p.currency, coalesce(p.note, '')
              from payment p join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
             where p.way = 'before' and not exists (
               select from payment_undoing u where u.tenant_id = p.tenant_id and u.payment_id = p.id)
             order by c.name, p.id""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    TakeOver takeOver;

    @Inject
    Payments payments;

    /** @param words what it was paid for, or where it came from */
    public record Ahead(UUID customerId, Money amount, String words) {}

    public record Kept(UUID payment, String customer, LocalDate day, Ahead ahead) {}

    /** On the day of the take-over, and what is wrong with it is said at the day since when; answers the payment. */
    public UUID keep(Ahead ahead) {
        var checks = new Checks();
        String words = checks.line("words", ahead.words());
        checks.orRefuse();
        LocalDate day = takeOver.dayOrToday();
        takeOver.on(day);
        try {
            return payments.take(
                    new NewPayment(ahead.customerId(), day, Way.BEFORE, ahead.amount(), null, words, List.of()));
        } catch (Refused refused) {
            throw new Refused(refused.refusals().stream()
                    .map(why -> "day".equals(why.field()) ? why.at("since") : why)
                    .toList());
        }
    }

    /** What was kept so and not undone, by customer. */
    public List<Kept> all() {
        List<Kept> all = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(STANDING);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                all.add(new Kept(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getObject(4, LocalDate.class),
                        new Ahead(
                                row.getObject(3, UUID.class),
                                Money.ofMinor(row.getLong(5), row.getString(6)),
                                row.getString(7))));
            }
            return all;
        } catch (SQLException cause) {
            throw new IllegalStateException("what was prepaid before could not be listed", cause);
        }
    }
}
