package changeover.billing.ledger;

import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The accountant's own code for each role of the journal. */
@ApplicationScoped
public class AccountCodes {

    /** The most characters of a code. */
    public static final int LONGEST = 40;

    @Inject
    AgroalDataSource datasource;

    /** Every role there is: the fixed ones, and each tax that was ever charged. */
    public Set<String> roles() {
        Set<String> roles = new LinkedHashSet<>();
        Arrays.stream(AccountRole.values()).map(AccountRole::code).forEach(roles::add);
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select distinct concat_ws(' ', 'tax', code, coalesce(registration, region)) from invoice_tax
                         order by 1""");
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                roles.add(row.getString(1));
            }
            return roles;
        } catch (SQLException cause) {
            throw new IllegalStateException("the roles could not be read", cause);
        }
    }

    public Map<String, String> all() {
        Map<String, String> codes = new LinkedHashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select =
                        connection.prepareStatement("select role, code from account_code order by role");
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                codes.put(row.getString(1), row.getString(2));
            }
            return codes;
        } catch (SQLException cause) {
            throw new IllegalStateException("the account codes could not be read", cause);
        }
    }

    /** Sets these roles' codes; an empty one takes the role's code away. */
    public void set(Map<String, String> codes) {
        Set<String> roles = roles();
        try (Connection connection = datasource.getConnection();
                PreparedStatement write = connection.prepareStatement("""
                        insert into account_code (role, code) values (?, ?)
                        on conflict (tenant_id, role) do update set code = excluded.code
                          where account_code.code <> excluded.code""");
                PreparedStatement gone = connection.prepareStatement("delete from account_code where role = ?")) {
            for (Map.Entry<String, String> one : codes.entrySet()) {
                String code = one.getValue().strip();
                if (!roles.contains(one.getKey())) {
                    throw Refusal.of("account.role-unknown").thrown();
                }
                if (code.isEmpty()) {
                    gone.setString(1, one.getKey());
                    gone.executeUpdate();
                } else {
                    write.setString(1, one.getKey());
                    write.setString(2, code);
                    write.executeUpdate();
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the account codes could not be kept", cause);
        }
    }
}
