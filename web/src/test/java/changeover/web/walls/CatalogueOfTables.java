package changeover.web.walls;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/** What the database's own catalogue says about the tables: their columns, their references, their views. */
@ApplicationScoped
class CatalogueOfTables {

    @Inject
    OwnersEyes eyes;

    private final Map<String, String> columns = new ConcurrentHashMap<>();
    private List<Reference> references = List.of();

    /** @param columns the reference's columns, @param targets what they point at, both without the business */
    record Reference(String name, String table, List<String> columns, String target, List<String> targets) {

        /** Writes a row of ours ({@code ?} first) that points at a row of theirs ({@code ?} second). */
        String insert(CatalogueOfTables tables) {
            String pairs = String.join(", ", pairs("'%s', (select o -> '%s' from other)"));
            return "with own as (select ?::jsonb r), other as (select ?::jsonb o) insert into " + table + " ("
                    + tables.columns(table) + ") select " + tables.columns(table)
                    + " from own, jsonb_populate_record(null::" + table + ", own.r || jsonb_build_object(" + pairs
                    + "))";
        }

        /** Turns a row of ours towards theirs. */
        String update() {
            String sets =
                    String.join(", ", pairs("%1$s = (jsonb_populate_record(null::" + target + ", other.o)).%2$s"));
            return "with own as (select ?::jsonb r), other as (select ?::jsonb o) update " + table + " t set " + sets
                    + " from own, other where t.id = (own.r ->> 'id')::uuid";
        }

        private List<String> pairs(String form) {
            return java.util.stream.IntStream.range(0, columns.size())
                    .mapToObj(at -> form.formatted(columns.get(at), targets.get(at)))
                    .toList();
        }

        @Override
        public String toString() {
            return table + "." + name;
        }
    }

    List<String> views() {
        return eyes.texts("""
                select c.relname from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'tenant_id'
                 where c.relkind in ('v', 'm') and c.relnamespace = 'public'::regnamespace order by 1
                """);
    }

    /** One row of a business as JSON. */
    Optional<String> row(String table, UUID tenant) {
        return eyes
                .texts("select to_jsonb(t)::text from " + table + " t where tenant_id = ? order by id limit 1", tenant)
                .stream()
                .findFirst();
    }

    /** The same row under a new id, where the id is its own. */
    String anew(String row, String table) {
        boolean points = references().stream()
                .anyMatch(one -> one.table().equals(table) && one.columns().contains("id"));
        return points ? row : row.replaceFirst("\"id\": \"[^\"]*\"", "\"id\": \"" + UUID.randomUUID() + "\"");
    }

    String insert(String table) {
        return "insert into " + table + " (" + columns(table) + ") select " + columns(table)
                + " from jsonb_populate_record(null::" + table + ", ?::jsonb)";
    }

    /** Every column that a statement may write. */
    String columns(String table) {
        return columns.computeIfAbsent(table, _ -> eyes.texts("""
                        select string_agg(quote_ident(attname), ', ' order by attnum) from pg_attribute
                         where attrelid = ?::regclass and attnum > 0 and not attisdropped and attgenerated = ''
                        """, table).getFirst());
    }

    synchronized List<Reference> references() {
        references = references.isEmpty() ? readReferences() : references;
        return references;
    }

    private List<Reference> readReferences() {
        return eyes.texts("""
                        select concat_ws('|', k.conname, k.conrelid::regclass, k.confrelid::regclass,
                            string_agg(a.attname, ',' order by n.at), string_agg(b.attname, ',' order by n.at))
                          from pg_constraint k, unnest(k.conkey, k.confkey) with ordinality n (mine, yours, at)
                          join pg_attribute a on true join pg_attribute b on true
                         where k.contype = 'f' and k.confrelid <> 'business'::regclass
                           and k.connamespace = 'public'::regnamespace
                           and a.attrelid = k.conrelid and a.attnum = n.mine
                           and b.attrelid = k.confrelid and b.attnum = n.yours and a.attname <> 'tenant_id'
                         group by k.oid, k.conname, k.conrelid, k.confrelid order by 1
                        """).stream()
                .map(line -> line.split("\\|"))
                .map(part -> new Reference(
                        part[0], part[1], List.of(part[3].split(",")), part[2], List.of(part[4].split(","))))
                .toList();
    }

    /** References whose own business is not held against the target's. */
    List<String> referencesWithoutTheirBusiness() {
        return eyes.texts("""
                select k.conrelid::regclass || '.' || k.conname from pg_constraint k
                 where k.contype = 'f' and k.confrelid <> 'business'::regclass
                   and k.connamespace = 'public'::regnamespace
                   and not exists (
                    select 1 from unnest(k.conkey, k.confkey) n (mine, yours)
                      join pg_attribute a on a.attrelid = k.conrelid and a.attnum = n.mine and a.attname = 'tenant_id'
                      join pg_attribute b on b.attrelid = k.confrelid and b.attnum = n.yours and b.attname = 'tenant_id')
                """);
    }
}
