package changeover.deploy.admin;

import java.util.List;

/** The locks of the house: each table and each role as it must be. */
final class HouseInvariants {
    private static final String OWNED = """
            select c.oid, c.relrowsecurity, c.relforcerowsecurity
              from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'tenant_id'
             where c.relkind in ('r', 'p') and c.relnamespace = 'public'::regnamespace
            """;

    static final List<Invariant> ALL = List.of(
            new Invariant("tenants-locked", "business", """
                    select count(*), count(*) filter (where not (relrowsecurity and relforcerowsecurity)
                        or not exists (select 1 from pg_policy p where p.polrelid = t.oid))
                      from (%s) t""".formatted(OWNED)),
            new Invariant("keys-by-tenant", "business", """
                    select count(*), count(*) filter (where not exists (
                        select 1 from pg_index i join pg_attribute a on a.attrelid = i.indrelid and a.attnum = i.indkey[0]
                         where i.indrelid = t.oid and i.indisprimary and a.attname = 'tenant_id'))
                      from (%s) t""".formatted(OWNED)),
            new Invariant("references-by-tenant", "business", """
                    select count(*), count(*) filter (where not exists (
                        select 1 from pg_attribute a
                         where a.attrelid = f.conrelid and a.attnum = any (f.conkey) and a.attname = 'tenant_id'))
                      from pg_constraint f join (%s) t on t.oid = f.conrelid
                     where f.contype = 'f'""".formatted(OWNED)),
            new Invariant("roles-plain", "business", """
                    select count(*), count(*) filter (where rolsuper or rolbypassrls or rolcreaterole or rolcreatedb
                        or exists (select 1 from pg_class c where c.relowner = r.oid))
                      from pg_roles r where rolname in ('changeover_app', 'changeover_lookup')"""),
            new Invariant("owners", "membership", """
                    select count(*), count(*) filter (where not exists (
                        select 1 from membership m where m.tenant_id = b.id and m.role = 'owner' and m.until_day is null))
                      from business b"""),
            new Invariant("days-in-order", "day_passed", """
                    select count(*), count(*) filter (where day <> before + 1)
                      from (select day, lag(day) over (partition by tenant_id order by day) as before from day_passed) d"""));

    private HouseInvariants() {}
}
