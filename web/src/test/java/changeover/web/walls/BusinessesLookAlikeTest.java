package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A business that the database has never counted is answered as one that it knows: of none is counted how common its rows are. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BusinessesLookAlikeTest {

    @Inject
    OwnersEyes eyes;

    @Test
    void of_no_table_the_database_counts_whose_rows_are_common() {
        assertEquals(List.of(), eyes.texts("""
                select c.relname from pg_class c
                  join pg_attribute a on a.attrelid = c.oid and a.attname = 'tenant_id' and not a.attisdropped
                  left join pg_stats s on s.schemaname = 'public' and s.tablename = c.relname and s.attname = 'tenant_id'
                 where c.relkind = 'r' and c.relnamespace = 'public'::regnamespace
                   and (a.attstattarget is distinct from 0 or s.n_distinct is distinct from 50
                     or s.most_common_vals is not null)
                 order by 1
                """));
    }
}
