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
import java.util.List;
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
                PreparedStatement select = connection.prepareStatement(
                        "select distinct " + AccountRole.OF_TAX + " from invoice_tax t order by 1");
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
        if (!roles().containsAll(codes.keySet())) {
            throw Refusal.of("account.role-unknown").thrown();
        }
        Object[] roles = codes.keySet().toArray();
        Object[] stripped = codes.values().stream().map(String::strip).toArray();
        try (Connection connection = datasource.getConnection();
                PreparedStatement gone = connection.prepareStatement("""
                        delete from account_code a using unnest(?::text[], ?::text[]) as r(role, code)
                         where a.role = r.role and r.code = ''""");
                PreparedStatement kept = connection.prepareStatement("""
                        insert into account_code (role, code)
                        select r.role, r.code from unnest(?::text[], ?::text[]) as r(role, code) where r.code <> ''
                        on conflict (tenant_id, role) do update set code = excluded.code
                          where account_code.code <> excluded.code""")) {
            for (PreparedStatement one : List.of(gone, kept)) {
                one.setArray(1, connection.createArrayOf("text", roles));
                one.setArray(2, connection.createArrayOf("text", stripped));
                one.executeUpdate();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the account codes could not be kept", cause);
        }
    }
}
