package changeover.billing.bank;

import changeover.billing.payments.Way;
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
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The bank's lines: those that wait for somebody to say what they are, and those that were said. */
@ApplicationScoped
public class BankLines {

    /** A use of line {@code l}: money that came in, though the bank may have taken it back since, or that it took back. */
    static final String USED = """
            exists (select 1 from bank_line_use u
                      left join payment_undoing x on x.tenant_id = u.tenant_id and x.payment_id = u.payment_id
                     where u.tenant_id = l.tenant_id and u.line_id = l.id and (u.how = 'returned' or x.id is null or x.how = 'bounced'))""";

    private static final String DISMISSED = """
            exists (select 1 from bank_line_dismissal d where d.tenant_id = l.tenant_id and d.line_id = l.id)""";

    private static final String ROWS = """
            select l.id, l.bank_id, b.name, l.day, l.amount_minor, l.words, l.reference, l.way
              from bank_line l join bank b on b.tenant_id = l.tenant_id and b.id = l.bank_id
             where %s order by l.day, l.id limit %d""";

    /**
     * What a line was said to be.
     *
     * @param how booked, noted, returned or dismissed
     * @param why the reasons at the time, or why it is no customer's money
     * @param customerId whose money it is; null for nobody's and for that of several
     * @param payments how many were noted together
     */
    public record Said(
            BankLine line, String how, String why, @Nullable UUID customerId, String customer, int payments) {}

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** The oldest first. */
    public List<BankLine> waiting(int most) {
        return read("not " + USED + " and not " + DISMISSED, null, most);
    }

    public Optional<BankLine> one(UUID id) {
        return read("l.id = ?", id, 1).stream().findFirst();
    }

    /** Whether nobody has said yet what it is. */
    public boolean waits(UUID id) {
        return !read("l.id = ? and not " + USED + " and not " + DISMISSED, id, 1)
                .isEmpty();
    }

    /** The newest first. */
    public List<Said> said(int most) {
        Currency currency = businesses.current().currency();
        List<Said> said = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select l.id, l.bank_id, b.name, l.day, l.amount_minor, l.words, l.reference, l.way, s.how, s.why,
                               s.customer_id, coalesce(c.name, ''), s.payments
                          from (select u.tenant_id, u.line_id, u.how, u.why, max(u.made_at) as made_at, count(*)::int as payments,
                                       case when count(*) = 1 then (array_agg(p.customer_id))[1] end as customer_id
                                  from bank_line_use u
                                  join payment p on p.tenant_id = u.tenant_id and p.id = u.payment_id
                                  left join payment_undoing x on x.tenant_id = u.tenant_id and x.payment_id = u.payment_id
                                 where u.how = 'returned' or x.id is null or x.how = 'bounced'
                                 group by u.tenant_id, u.line_id, u.how, u.why, case u.how when 'noted' then u.line_id else u.payment_id end
                                union all
                                select tenant_id, line_id, 'dismissed', why, made_at, 0, null from bank_line_dismissal) s
                          join bank_line l on l.tenant_id = s.tenant_id and l.id = s.line_id
                          join bank b on b.tenant_id = l.tenant_id and b.id = l.bank_id
                          left join customer c on c.tenant_id = s.tenant_id and c.id = s.customer_id
                         order by s.made_at desc, l.day desc, l.id limit ?""")) {
            select.setInt(1, most);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                said.add(new Said(
                        line(row, currency),
                        row.getString(9),
                        row.getString(10),
                        row.getObject(11, UUID.class),
                        row.getString(12),
                        row.getInt(13)));
            }
            return said;
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank's lines could not be listed", cause);
        }
    }

    /** @param id bound where the condition asks for one, else null */
    private List<BankLine> read(String where, @Nullable UUID id, int most) {
        Currency currency = businesses.current().currency();
        List<BankLine> lines = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(ROWS.formatted(where, most))) {
            if (id != null) {
                select.setObject(1, id);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                lines.add(line(row, currency));
            }
            return lines;
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank's lines could not be read", cause);
        }
    }

    private static BankLine line(ResultSet row, Currency currency) throws SQLException {
        return new BankLine(
                row.getObject(1, UUID.class),
                row.getObject(2, UUID.class),
                row.getString(3),
                row.getObject(4, LocalDate.class),
                new Money(row.getLong(5), currency),
                row.getString(6),
                row.getString(7),
                row.getString(8) == null ? null : Way.of(row.getString(8)));
    }
}
