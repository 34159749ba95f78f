package changeover.contracts.merging;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.UUID;

/** Rows come along with a merge and are written down one by one, so that exactly these go back. */
@ApplicationScoped
public class Moves {

    @Inject
    EntityManager rows;

    /**
     * Moves rows of one table from the other home to the one that lives on.
     *
     * @param table as it stands in our own code
     * @param which a condition on the row {@code t}, as it stands in our own code; {@code :home} is the one that lives on
     */
    public void along(UUID merge, UUID home, UUID other, String table, String which) {
        rows.createNativeQuery("""
                        with moved as (
                          update %s t set home_id = :home
                           where t.tenant_id = current_tenant() and t.home_id = :other and (%s) returning t.id)
                        insert into home_merge_move (merge_id, table_name, row_id) select :merge, '%s', id from moved""".formatted(table, which, table))
                .setParameter("home", home)
                .setParameter("other", other)
                .setParameter("merge", merge)
                .executeUpdate();
    }

    /** The same for rows with a name that may be taken in the home that lives on: it then gets a number behind it. */
    public void along(UUID merge, UUID home, UUID other, String table, String name, String which) {
        rows.createNativeQuery("""
                        with moving as (
                          select t.id, t.%2$s as was,
                                 case when exists (select from %1$s k where k.tenant_id = t.tenant_id and k.home_id = :home
                                                      and k.%2$s = t.%2$s)
                                   then t.%2$s || ' (' || row_number() over (order by t.id) || ')' else t.%2$s end as now
                            from %1$s t where t.tenant_id = current_tenant() and t.home_id = :other and (%3$s)),
                        moved as (
                          update %1$s t set home_id = :home, %2$s = m.now from moving m
                           where t.tenant_id = current_tenant() and t.id = m.id returning t.id)
                        insert into home_merge_move (merge_id, table_name, row_id, was_called, is_called)
                        select :merge, '%1$s', m.id, m.was, m.now from moving m join moved d on d.id = m.id""".formatted(table, name, which))
                .setParameter("home", home)
                .setParameter("other", other)
                .setParameter("merge", merge)
                .executeUpdate();
    }

    /** Those of the table that came along and are still there go back. */
    public void back(UUID merge, UUID home, UUID other, String table) {
        rows.createNativeQuery("""
                        update %s t set home_id = :other
                          from home_merge_move m
                         where m.tenant_id = current_tenant() and m.merge_id = :merge and m.table_name = '%s'
                           and t.tenant_id = m.tenant_id and t.id = m.row_id and t.home_id = :home""".formatted(table, table))
                .setParameter("home", home)
                .setParameter("other", other)
                .setParameter("merge", merge)
                .executeUpdate();
    }

    /** The same with their names, where nobody gave another since. */
    public void back(UUID merge, UUID home, UUID other, String table, String name) {
        rows.createNativeQuery("""
                        update %1$s t set home_id = :other,
                               %2$s = case when t.%2$s = m.is_called then m.was_called else t.%2$s end
                          from home_merge_move m
                         where m.tenant_id = current_tenant() and m.merge_id = :merge and m.table_name = '%1$s'
                           and t.tenant_id = m.tenant_id and t.id = m.row_id and t.home_id = :home""".formatted(table, name))
                .setParameter("home", home)
                .setParameter("other", other)
                .setParameter("merge", merge)
                .executeUpdate();
    }

    /** Rows of agreements that go back go with them, those too that were made since. */
    public void backWithAgreements(UUID merge, UUID home, UUID other, String table) {
        rows.createNativeQuery("""
                        update %s t set home_id = :other
                          from home_merge_move m
                         where m.tenant_id = current_tenant() and m.merge_id = :merge and m.table_name = 'agreement'
                           and t.tenant_id = m.tenant_id and t.agreement_id = m.row_id and t.home_id = :home""".formatted(table))
                .setParameter("home", home)
                .setParameter("other", other)
                .setParameter("merge", merge)
                .executeUpdate();
    }

    /**
     * Rows that hang on a row of the other home, which went back before, go back with it, those too that were made since.
     *
     * @param key of the table, as it stands in our own code: it names a row of {@code of}
     * @param which a condition on the row {@code t}, as it stands in our own code
     */
    public void backWith(UUID home, UUID other, String table, String key, String of, String which) {
        rows.createNativeQuery("""
                        update %s t set home_id = :other
                          from %s k
                         where t.tenant_id = current_tenant() and t.home_id = :home
                           and k.tenant_id = t.tenant_id and k.id = t.%s and k.home_id = :other and (%s)""".formatted(table, of, key, which))
                .setParameter("home", home)
                .setParameter("other", other)
                .executeUpdate();
    }
}
