package changeover.scheduling.stock;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.PartSize;
import changeover.contracts.catalogue.TradeUnit;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The parts that the current business carries: of the catalogue's kinds in the sizes it needs, and of its own. */
@ApplicationScoped
public class Parts {

    private static final String EVER = "select code, name_en, name_fr, unit, fits_key, size from part where true";
    private static final String ROWS = EVER + " and withdrawn_on is null";

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue trade;

    /** Writes a part, or writes it anew under its code. */
    public KnownPart keep(KnownPart part) {
        if (!part.code().matches("[a-zA-Z0-9][a-zA-Z0-9._/x-]{0,59}")) {
            throw refused("part-code", "code");
        }
        if (part.name().en().isBlank() || part.name().fr().isBlank()) {
            throw refused("part-name", "name");
        }
        if (TradeUnit.find(part.unit()).isEmpty()) {
            throw refused("part-unit", "unit");
        }
        if (part.kind() != null
                && trade.catalogue().parts().stream()
                        .noneMatch(kind -> kind.code().equals(part.kind()))) {
            throw refused("part-kind", "kind");
        }
        rows.createNativeQuery("""
                        insert into part (code, name_en, name_fr, unit, fits_key, size)
                        values (:code, :en, :fr, :unit, cast(:kind as text), cast(:size as text))
                        on conflict (tenant_id, code) do update set name_en = excluded.name_en,
                          name_fr = excluded.name_fr, unit = excluded.unit, fits_key = excluded.fits_key,
                          size = excluded.size, withdrawn_on = null, version = part.version + 1
                        """)
                .setParameter("code", part.code())
                .setParameter("en", part.name().en())
                .setParameter("fr", part.name().fr())
                .setParameter("unit", part.unit())
                .setParameter("kind", part.kind())
                .setParameter("size", part.size())
                .executeUpdate();
        return part;
    }

    public List<KnownPart> all() {
        return read(ROWS + " order by name_en, code", Map.of());
    }

    public Optional<KnownPart> find(String code) {
        return read(ROWS + " and code = :code", Map.of("code", code)).stream().findFirst();
    }

    /** How often it was written anew: what its form or request was filled on; empty when it is not carried. */
    public Optional<Integer> edition(String code) {
        return rows.createNativeQuery(
                        "select version from part where code = :code and withdrawn_on is null for update",
                        Integer.class)
                .setParameter("code", code)
                .getResultStream()
                .map(Integer.class::cast)
                .findFirst();
    }

    /** Also when it is carried no more, for what was used before. */
    public Optional<KnownPart> everKnown(String code) {
        return read(EVER + " and code = :code", Map.of("code", code)).stream().findFirst();
    }

    /** It is carried no more; false when there is no such part. */
    public boolean withdraw(String code, LocalDate day) {
        return rows.createNativeQuery("update part set withdrawn_on = :day where code = :code and withdrawn_on is null")
                        .setParameter("day", day)
                        .setParameter("code", code)
                        .executeUpdate()
                == 1;
    }

    /**
     * The one of a kind that fits, however its size is written: first one that says a class too, last one that any will do for;
     * empty when the business carries none of that size.
     */
    public static Optional<KnownPart> fitting(List<KnownPart> known, String kind, @Nullable String size) {
        PartSize asked = size == null ? null : PartSize.of(size);
        return known.stream()
                .filter(part -> kind.equals(part.kind()))
                .filter(part -> part.which().isEmpty()
                        || (asked != null && part.which().orElseThrow().fits(asked)))
                .min(Comparator.comparing((KnownPart part) -> part.which().isEmpty())
                        .thenComparing(part -> asked == null
                                || !asked.saysClass()
                                || part.which().filter(PartSize::saysClass).isEmpty()));
    }

    private List<KnownPart> read(String sql, Map<String, Object> facts) {
        var ask = rows.createNativeQuery(sql, Object[].class);
        facts.forEach(ask::setParameter);
        return ask.getResultStream().map(row -> part((Object[]) row)).toList();
    }

    private static KnownPart part(Object[] row) {
        return new KnownPart(
                (String) row[0],
                new Wording((String) row[1], (String) row[2]),
                (String) row[3],
                (String) row[4],
                (String) row[5]);
    }

    private static changeover.contracts.words.Refused refused(String code, String field) {
        return Refusal.of("stock." + code).at(field).thrown();
    }
}
