package changeover.billing.payments;

import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.calls.Trouble;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A deposit may name the agreement or the call that it is taken for, each of the home where the work will be. */
@ApplicationScoped
public class DepositWork {

    private static final String AGREEMENTS = """
            select a.id, a.number, a.plan_name_en, a.plan_name_fr, h.street
              from agreement a join home h on h.tenant_id = a.tenant_id and h.id = a.home_id
             where a.home_id = any (?) and a.term_until > ?
               and not exists (select 1 from agreement_ending e where e.tenant_id = a.tenant_id and e.agreement_id = a.id)
             order by a.number desc limit 200""";

    private static final String CALLS = """
            select c.id, c.trouble, (c.rang_at at time zone b.zone)::date, h.street
              from call c
              join business b on b.id = c.tenant_id
              join home h on h.tenant_id = c.tenant_id and h.id = c.home_id
             where c.home_id = any (?) and c.rang_at > ?::date - interval '1 year'
             order by c.rang_at desc limit 200""";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Agreements agreements;

    @Inject
    Calls calls;

    /** An agreement whose term is not over. */
    public record OfAgreement(UUID id, int number, Wording plan, String street) {}

    /** A call of the last year. */
    public record OfCall(UUID id, Wording trouble, LocalDate day, String street) {}

    public List<OfAgreement> agreements(Collection<UUID> homes, LocalDate today) {
        List<OfAgreement> found = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = select(connection, AGREEMENTS, homes, today);
                var row = select.executeQuery()) {
            while (row.next()) {
                found.add(new OfAgreement(
                        row.getObject(1, UUID.class),
                        row.getInt(2),
                        new Wording(row.getString(3), row.getString(4)),
                        row.getString(5)));
            }
            return found;
        } catch (SQLException cause) {
            throw new IllegalStateException("the agreements could not be read", cause);
        }
    }

    public List<OfCall> calls(Collection<UUID> homes, LocalDate today) {
        List<OfCall> found = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = select(connection, CALLS, homes, today);
                var row = select.executeQuery()) {
            while (row.next()) {
                found.add(new OfCall(
                        row.getObject(1, UUID.class),
                        Trouble.ofCode(row.getString(2)).wording(),
                        row.getObject(3, LocalDate.class),
                        row.getString(4)));
            }
            return found;
        } catch (SQLException cause) {
            throw new IllegalStateException("the calls could not be read", cause);
        }
    }

    private static PreparedStatement select(Connection connection, String sql, Collection<UUID> homes, LocalDate today)
            throws SQLException {
        PreparedStatement select = connection.prepareStatement(sql);
        select.setArray(1, connection.createArrayOf("uuid", homes.toArray()));
        select.setObject(2, today);
        return select;
    }

    /** Why the deposit may not name what it names; one of another home, and one that nobody knows, are answered alike. */
    Optional<Refusal> refusal(NewDeposit taken) {
        if (taken.agreementId() != null
                && agreements
                        .find(taken.agreementId())
                        .map(Agreement::homeId)
                        .filter(taken.homeId()::equals)
                        .isEmpty()) {
            return Optional.of(Refusal.of("deposit.agreement-elsewhere").at("agreement"));
        }
        if (taken.callId() != null
                && calls.find(taken.callId())
                        .map(Call::homeId)
                        .filter(taken.homeId()::equals)
                        .isEmpty()) {
            return Optional.of(Refusal.of("deposit.call-elsewhere").at("call"));
        }
        return Optional.empty();
    }
}
