package changeover.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import io.agroal.api.AgroalDataSource;
import io.quarkus.agroal.DataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManagerFactory;
import java.lang.reflect.Field;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hibernate.annotations.TenantId;
import org.junit.jupiter.api.Test;

/** Fails for whoever adds an entity or a table and forgets one of the two locks. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EveryTableIsLockedTest {

    /** The closed list of tables that belong to no business. */
    private static final Set<String> UNOWNED = Set.of("business", "kept_form", "flyway_schema_history");

    @Inject
    EntityManagerFactory entities;

    @Inject
    @DataSource("lookup")
    AgroalDataSource database;

    @Inject
    AgroalDataSource application;

    @Test
    void every_entity_but_the_business_itself_names_its_tenant() {
        var forgotten = entities.getMetamodel().getEntities().stream()
                .map(entity -> entity.getJavaType())
                .filter(type -> !type.getSimpleName().equals("Business"))
                .filter(type -> !namesItsTenant(type))
                .map(Class::getName)
                .toList();
        assertEquals(List.of(), forgotten);
    }

    private static boolean namesItsTenant(Class<?> type) {
        for (Class<?> one = type; one != null; one = one.getSuperclass()) {
            for (Field field : one.getDeclaredFields()) {
                if (field.isAnnotationPresent(TenantId.class)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void row_security_is_forced_on_every_owned_table() {
        assertEquals(List.of(), names("""
                        select relname from pg_class where relkind in ('r', 'p') and relnamespace = 'public'::regnamespace
                           and not (relrowsecurity and relforcerowsecurity) order by 1
                        """));
    }

    @Test
    void every_owned_table_has_a_tenant_that_cannot_be_missing() {
        assertEquals(List.of(), names("""
                        select c.relname from pg_class c where relkind in ('r', 'p') and relnamespace = 'public'::regnamespace
                           and not exists (select 1 from pg_attribute a where a.attrelid = c.oid
                                            and a.attname = 'tenant_id' and a.attnotnull) order by 1
                        """));
    }

    @Test
    void every_key_and_every_reference_carries_the_tenant() {
        assertEquals(List.of(), names("""
                        select c.relname from pg_constraint k join pg_class c on c.oid = k.conrelid
                         where c.relnamespace = 'public'::regnamespace and k.contype in ('p', 'u', 'f')
                           and k.confrelid is distinct from 'business'::regclass
                           and not exists (select 1 from unnest(k.conkey) n join pg_attribute a
                                on a.attrelid = k.conrelid and a.attnum = n where a.attname = 'tenant_id') order by 1
                        """));
    }

    /** Either by itself, or through a row that it cannot stand without. */
    @Test
    void every_owned_table_belongs_to_a_business_that_exists() {
        assertEquals(List.of(), names("""
                        select c.relname from pg_class c where relkind in ('r', 'p') and relnamespace = 'public'::regnamespace
                           and not exists (select 1 from pg_constraint k where k.conrelid = c.oid and k.contype = 'f'
                                and k.confrelid <> c.oid and not exists (select 1 from unnest(k.conkey) n join pg_attribute a
                                    on a.attrelid = k.conrelid and a.attnum = n where not a.attnotnull)) order by 1
                        """));
    }

    @Test
    void no_view_looks_past_row_security() {
        assertEquals(List.of(), names("""
                        select relname from pg_class where relnamespace = 'public'::regnamespace and (relkind = 'm'
                            or relkind = 'v' and not coalesce(reloptions::text like '%security_invoker=true%', false))
                        """));
    }

    @Test
    void without_a_business_the_application_sees_no_row_of_any_table() {
        for (String table : names("""
                select relname from pg_class where relkind = 'r' and relnamespace = 'public'::regnamespace
                   and has_table_privilege('changeover_app', oid, 'select') order by 1
                """)) {
            int seen = QuarkusTransaction.requiringNew().call(() -> rows(table));
            assertEquals(0, seen, table);
        }
    }

    private int rows(String table) throws SQLException {
        try (var connection = application.getConnection();
                var statement = connection.createStatement();
                var row = statement.executeQuery("select count(*) from " + table)) {
            row.next();
            return row.getInt(1);
        }
    }

    private List<String> names(String sql) {
        try (var connection = database.getConnection();
                var statement = connection.createStatement();
                var row = statement.executeQuery(sql)) {
            var found = new ArrayList<String>();
            while (row.next()) {
                if (!UNOWNED.contains(row.getString(1))) {
                    found.add(row.getString(1));
                }
            }
            return found;
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
