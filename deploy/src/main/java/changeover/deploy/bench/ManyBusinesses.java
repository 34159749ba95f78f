package changeover.deploy.bench;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * Businesses that are one another's copy, row by row: every key carries the business, so the same rows stand under another.
 * References are followed, so that nothing is written before what it names.
 */
final class ManyBusinesses {

    private static final String TABLES = """
            select c.relname from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'tenant_id'
             where c.relkind = 'r' and c.relnamespace = 'public'::regnamespace and not a.attisdropped order by 1""";

    private static final String NAMED = """
            select distinct t.relname from pg_constraint k join pg_class t on t.oid = k.confrelid
             where k.contype = 'f' and k.conrelid = ?::regclass and k.confrelid not in (k.conrelid, 'business'::regclass)""";

    private static final String COLUMNS = """
            select string_agg(quote_ident(attname), ', ' order by attnum),
              string_agg(case attname when 'tenant_id' then 'n.id' else 't.' || quote_ident(attname) end, ', ' order by attnum)
              from pg_attribute where attrelid = ?::regclass and attnum > 0 and not attisdropped and attgenerated = ''""";

    /** A statement was cancelled for the time it took. */
    private static final String TOO_LONG = "57014";

    private final Connection owner;
    private final UUID pattern;
    private final List<UUID> all = new ArrayList<>();
    private final Set<String> order = new LinkedHashSet<>();

    ManyBusinesses(Connection owner, UUID pattern) throws SQLException {
        this.owner = owner;
        this.pattern = pattern;
        all.add(pattern);
        for (String table : texts(TABLES, null)) {
            after(table);
        }
    }

    private void after(String table) throws SQLException {
        if (order.contains(table)) {
            return;
        }
        for (String named : texts(NAMED, table)) {
            after(named);
        }
        order.add(table);
    }

    List<UUID> all() {
        return List.copyOf(all);
    }

    /** So many in all, and the planner has looked at them; false, and as before, where that takes longer. */
    boolean growTo(int count, Duration longest) throws SQLException {
        int before = all.size();
        owner.setAutoCommit(false);
        try (Statement statement = owner.createStatement()) {
            grow(statement, count, Instant.now().plus(longest));
            owner.commit();
            return true;
        } catch (SQLException cause) {
            owner.rollback();
            all.subList(before, all.size()).clear();
            if (TOO_LONG.equals(cause.getSQLState())) {
                return false;
            }
            throw cause;
        } finally {
            owner.setAutoCommit(true);
        }
    }

    private void grow(Statement statement, int count, Instant end) throws SQLException {
        statement.execute("create temporary table newcomer (id uuid primary key)");
        try (PreparedStatement insert = owner.prepareStatement("insert into newcomer values (?)")) {
            for (int at = all.size(); at < count; at++) {
                UUID id = UUID.randomUUID();
                all.add(id);
                insert.setObject(1, id);
                insert.addBatch();
            }
            insert.executeBatch();
        }
        statement.execute("analyze newcomer");
        statement.execute("""
                insert into business (id, slug, name, language, zone, country, region, currency, opened_on)
                select n.id, 'b' || replace(n.id::text, '-', ''), b.name, b.language, b.zone, b.country, b.region, b.currency,
                  b.opened_on from business b, newcomer n where b.id = '%s'""".formatted(pattern));
        for (String table : order) {
            within(statement, end);
            copy(statement, table);
        }
        within(statement, end);
        statement.execute("drop table newcomer");
        statement.execute("analyze");
    }

    private static void within(Statement statement, Instant end) throws SQLException {
        long left = Duration.between(Instant.now(), end).toMillis();
        statement.execute("set local statement_timeout = " + Math.max(1, left));
    }

    private void copy(Statement statement, String table) throws SQLException {
        if (table.equals("audit") || table.equals("day_passed")) {
            return;
        }
        try (PreparedStatement ask = owner.prepareStatement(COLUMNS)) {
            ask.setString(1, table);
            ResultSet row = ask.executeQuery();
            row.next();
            statement.execute("insert into " + table + " (" + row.getString(1) + ") select " + row.getString(2)
                    + " from " + table + " t, newcomer n where t.tenant_id = '" + pattern + "' on conflict do nothing");
        }
    }

    private List<String> texts(String sql, @org.jspecify.annotations.Nullable String table) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (PreparedStatement ask = owner.prepareStatement(sql)) {
            if (table != null) {
                ask.setString(1, table);
            }
            ResultSet row = ask.executeQuery();
            while (row.next()) {
                texts.add(row.getString(1));
            }
        }
        return texts;
    }
}
