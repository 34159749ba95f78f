package changeover.contracts.agreements;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The agreements of many homes that were accepted and have not ended before their time. */
@ApplicationScoped
class AgreementsInForce {

    private static final String STANDING = """
            select a.home_id, a.number, a.plan_code, a.term_from, a.term_until, a.price_minor, a.currency
              from agreement a
             where a.home_id = any (?::uuid[])
               and exists (select from agreement_acceptance y where y.tenant_id = a.tenant_id and y.agreement_id = a.id)
               and not exists (select from agreement_ending e where e.tenant_id = a.tenant_id and e.agreement_id = a.id)
             order by a.term_from, a.number""";

    @Inject
    AgroalDataSource datasource;

    record Standing(int number, String plan, Term term, Money price) {}

    Map<UUID, List<Standing>> of(Collection<UUID> homes) {
        Map<UUID, List<Standing>> standing = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement ask = connection.prepareStatement(STANDING)) {
            ask.setArray(1, connection.createArrayOf("uuid", homes.toArray()));
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    standing.computeIfAbsent(row.getObject(1, UUID.class), _ -> new ArrayList<>())
                            .add(new Standing(
                                    row.getInt(2),
                                    row.getString(3),
                                    new Term(row.getObject(4, LocalDate.class), row.getObject(5, LocalDate.class)),
                                    Money.ofMinor(row.getLong(6), row.getString(7))));
                }
            }
            return standing;
        } catch (SQLException cause) {
            throw new IllegalStateException("the agreements in force could not be read", cause);
        }
    }
}
