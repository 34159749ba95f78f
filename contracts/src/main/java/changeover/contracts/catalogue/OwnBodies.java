package changeover.contracts.catalogue;

import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Kinds and tasks of a business's own, kept whole as the shipped files write them. */
@ApplicationScoped
class OwnBodies {

    private static final Set<String> TABLES = Set.of("own_kind", "own_task");

    private static final String READ = "select id, cast(body as text) as body, version, withdrawn_on from %s";

    @Inject
    EntityManager rows;

    <T> List<OwnRow<T>> all(String table, Class<T> type) {
        return read(rows.createNativeQuery(READ.formatted(known(table)) + " order by code", Tuple.class), type);
    }

    <T> Optional<OwnRow<T>> get(String table, UUID id, Class<T> type) {
        return read(
                        rows.createNativeQuery(READ.formatted(known(table)) + " where id = :id", Tuple.class)
                                .setParameter("id", id),
                        type)
                .stream()
                .findFirst();
    }

    private static <T> List<OwnRow<T>> read(Query query, Class<T> type) {
        var all = new ArrayList<OwnRow<T>>();
        for (Object row : query.getResultList()) {
            Tuple own = (Tuple) row;
            all.add(new OwnRow<>(
                    own.get("id", UUID.class),
                    CatalogueJson.read(own.get("body", String.class), type),
                    own.get("version", Number.class).intValue(),
                    own.get("withdrawn_on", LocalDate.class)));
        }
        return all;
    }

    /** False when there is none of that id here. */
    boolean withdraw(String table, UUID id, @Nullable LocalDate day) {
        return rows.createNativeQuery("update " + known(table)
                                + " set withdrawn_on = cast(:day as date), version = version + 1 where id = :id")
                        .setParameter("id", id)
                        .setParameter("day", day == null ? null : day.toString())
                        .executeUpdate()
                == 1;
    }

    UUID add(String table, String code, Object body) {
        return (UUID) rows.createNativeQuery(
                        "insert into " + known(table)
                                + " (code, body) values (:code, cast(:body as jsonb)) returning id",
                        UUID.class)
                .setParameter("code", code)
                .setParameter("body", CatalogueJson.write(body))
                .getSingleResult();
    }

    /** False when there is none of that id and code here; the code stays, since agreements and machines name it. */
    boolean rewrite(String table, UUID id, String code, Object body, FilledOn form) {
        Optional<Integer> version = rows.createNativeQuery(
                        "select version from " + known(table) + " where id = :id and code = :code for update",
                        Integer.class)
                .setParameter("id", id)
                .setParameter("code", code)
                .getResultStream()
                .map(Integer.class::cast)
                .findFirst();
        version.ifPresent(form::mustBe);
        return version.isPresent()
                && rows.createNativeQuery("update " + known(table)
                                        + " set body = cast(:body as jsonb), version = version + 1 where id = :id")
                                .setParameter("id", id)
                                .setParameter("body", CatalogueJson.write(body))
                                .executeUpdate()
                        == 1;
    }

    private static String known(String table) {
        if (!TABLES.contains(table)) {
            throw new IllegalArgumentException(table);
        }
        return table;
    }
}
