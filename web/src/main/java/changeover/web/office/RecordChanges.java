package changeover.web.office;

import changeover.web.office.Recorded.Hanging;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What was changed in a record and in what hangs on it, the newest first, a page at a time: who, when, what it said before
 * and after. A secret is never read: that it changed is told, not what it was.
 */
@ApplicationScoped
class RecordChanges {

    /** As many changes as a page holds. */
    static final int A_PAGE = 50;

    /** The columns that are the program's own and tell a person nothing. */
    static final Set<String> OUR_OWN = Set.of(
            "version",
            "tenant_id",
            "id",
            "home_id",
            "building_id",
            "visit_id",
            "visit_task_id",
            "agreement_id",
            "plan_id",
            "invoice_id",
            "payment_id",
            "equipment_id",
            "finding_id",
            "answers_id",
            "became_id",
            "renews_id",
            "credits_id",
            "follows_id",
            "operation_id",
            "place_id",
            "person_id",
            "made_by",
            "made_at",
            "batch",
            "position",
            "search",
            "currency",
            "visit_version",
            "during",
            "changes",
            "sha256",
            "hash",
            "previous_hash",
            "seller",
            "buyer",
            "works");

    /** What nobody reads again, and bytes. */
    static final Set<String> SECRET = Set.of("secret", "secret_digest", "logo");

    private static final String CHANGES = """
            select t.table_name, t.thing, a.act, a.at, a.person_id, k.field,
              case when k.field = any (:secret) then null else a.before ->> k.field end as was,
              case when k.field = any (:secret) then null else a.after ->> k.field end as now_is,
              jsonb_typeof(coalesce(nullif(a.before -> k.field, 'null'), a.after -> k.field)) as form, a.id as row
            from told t
            join audit a on a.tenant_id = current_tenant() and a.row_id = t.id and a.table_name = t.table_name
            cross join lateral (
              select key as field from jsonb_object_keys(case when a.act = 'update' then a.after else '{}' end) key
               where not key = any (:own)
              union all select '' where a.act = 'delete') k
            union all
            select t.table_name, t.thing, 'insert', t.made_at, t.made_by, '', null, null, null, t.id
            from told t where t.made_at is not null
            order by at desc, row desc, field
            limit :most offset :skipped
            """;

    @Inject
    EntityManager rows;

    /**
     * @param table what kind of thing was changed
     * @param thing what tells it from others of its kind, as it is written in its row
     * @param act update, delete or insert
     * @param field its column, empty when it came or went whole
     * @param form how the values were written: string, number, boolean, object, array
     */
    record Change(
            String table,
            String thing,
            String act,
            Instant at,
            @Nullable UUID person,
            String field,
            String before,
            String after,
            String form) {}

    /** The record itself: what tells it from others, who entered it and when. */
    record Entered(String thing, @Nullable UUID person, Instant at) {}

    /** One page of changes, and whether older ones follow. */
    record Read(List<Change> changes, boolean more) {}

    /** Empty when the business has no such record. */
    Optional<Entered> entered(Recorded kind, Object id, Locale locale) {
        Query query = rows.createNativeQuery(
                "select cast(r." + column(kind.label(), locale) + " as text) as thing, r.made_by, r.made_at from "
                        + kind.table() + " r where r.tenant_id = current_tenant() and r." + kind.key() + " = :id",
                Tuple.class);
        return query.setParameter("id", id)
                .getResultStream()
                .map(Tuple.class::cast)
                .map(row -> new Entered(
                        text((Tuple) row, "thing"),
                        ((Tuple) row).get("made_by", UUID.class),
                        ((Tuple) row).get("made_at", Instant.class)))
                .findFirst();
    }

    /** @param page counted from one */
    Read of(Recorded kind, @Nullable Object id, int page, Locale locale) {
        Query query = rows.createNativeQuery("with " + told(kind, locale) + CHANGES, Tuple.class)
                .setParameter("secret", SECRET.toArray(String[]::new))
                .setParameter("own", OUR_OWN.toArray(String[]::new))
                .setParameter("most", A_PAGE + 1)
                .setParameter("skipped", (long) A_PAGE * (page - 1));
        if (id != null) {
            query.setParameter("id", id);
        }
        var changes = new ArrayList<Change>();
        for (Object one : query.getResultList()) {
            changes.add(change((Tuple) one));
        }
        boolean more = changes.size() > A_PAGE;
        return new Read(more ? List.copyOf(changes.subList(0, A_PAGE)) : changes, more);
    }

    /** The rows that are told of: the record, what hangs on it, and what hung on it once. */
    private static String told(Recorded kind, Locale locale) {
        var parts = new ArrayList<String>();
        String first = kind.isList() ? "r.made_at" : "cast(null as timestamptz)";
        parts.add(row(kind.table(), kind.key(), kind.label(), first, locale));
        for (Hanging part : kind.parts()) {
            String later = "case when r.made_at > (select made_at from " + kind.table() + " o where o." + kind.key()
                    + " = :id) then r.made_at end";
            String at = kind.isList() ? "r.made_at" : part.entered() ? later : "cast(null as timestamptz)";
            parts.add(row(part.table(), part.by(), part.label(), at, locale));
        }
        if (kind.isList() || !kind.parts().isEmpty()) {
            parts.add(gone(kind, locale));
        }
        return "told (table_name, id, thing, made_at, made_by) as (" + String.join(" union all ", parts) + ")\n";
    }

    private static String row(String table, String by, String label, String madeAt, Locale locale) {
        return "select '" + table + "', r.id, cast(r." + column(label, locale) + " as text), " + madeAt
                + ", r.made_by from " + table + " r where r.tenant_id = current_tenant()"
                + (by.isEmpty() ? "" : " and r." + by + " = :id");
    }

    private static String gone(Recorded kind, Locale locale) {
        String whose = kind.isList()
                ? "g.act = 'delete' and g.table_name in ('" + kind.table() + "'"
                        + kind.parts().stream()
                                .map(part -> ", '" + part.table() + "'")
                                .collect(Collectors.joining())
                        + ")"
                : "g.of_id = :id";
        String labels = kind.parts().stream()
                .map(part -> " when '" + part.table() + "' then g.before ->> '" + column(part.label(), locale) + "'")
                .collect(Collectors.joining());
        return "select g.table_name, g.row_id, case g.table_name" + labels + " when '" + kind.table()
                + "' then g.before ->> '" + column(kind.label(), locale) + "' end, cast(null as timestamptz),"
                + " cast(null as uuid) from audit g where g.tenant_id = current_tenant() and " + whose;
    }

    private static String column(String label, Locale locale) {
        return label.replace("*", locale.getLanguage().equals("fr") ? "fr" : "en");
    }

    private static Change change(Tuple row) {
        return new Change(
                text(row, "table_name"),
                text(row, "thing"),
                text(row, "act"),
                row.get("at", Instant.class),
                row.get("person_id", UUID.class),
                text(row, "field"),
                text(row, "was"),
                text(row, "now_is"),
                text(row, "form"));
    }

    private static String text(Tuple row, String name) {
        String text = row.get(name, String.class);
        return text == null ? "" : text;
    }
}
