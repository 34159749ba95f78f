package changeover.billing.warranties;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The months for which we, the makers of parts and the law answer; a row is followed by a newer one and never changed. */
@ApplicationScoped
public class Guarantees {

    /** What we do by plan is maintenance, everything else is repair. */
    public static final Set<String> WORKS = Set.of("maintenance", "repair");

    private static final int SHORTEST_SOURCE = 10;
    private static final int MOST_OF_OURS = 240;
    private static final int MOST = 480;

    @Inject
    EntityManager rows;

    @Inject
    Parts parts;

    @Inject
    OwnCatalogue catalogue;

    /** How long we answer for what we do from that day on; nought for not at all. */
    public void ours(String work, LocalDate from, int months) {
        refuseMonths(months, MOST_OF_OURS);
        if (!WORKS.contains(work)) {
            throw Refusal.of("typed.choose").at("work").thrown();
        }
        rows.createNativeQuery("insert into labour_guarantee (work, from_day, months) values (:work, :from, :months)")
                .setParameter("work", work)
                .setParameter("from", from)
                .setParameter("months", months)
                .executeUpdate();
    }

    /** How long a maker answers for a part that is fitted from that day on. @param basis where it is written */
    public void part(String part, LocalDate from, int months, String basis) {
        refuseMonths(months, MOST);
        if (parts.find(part).isEmpty()) {
            throw Refusal.of("stock.part-not-found").at("part").thrown();
        }
        if (basis.isBlank()) {
            throw Refusal.of("text.missing").at("basis").thrown();
        }
        rows.createNativeQuery("insert into part_warranty (part_code, from_day, months, basis)"
                        + " values (:part, :from, :months, :basis)")
                .setParameter("part", part)
                .setParameter("from", from)
                .setParameter("months", months)
                .setParameter("basis", basis.strip())
                .executeUpdate();
    }

    /**
     * What the law gives at a place to machines that are installed from that day on.
     *
     * @param region ISO 3166-2
     * @param kind of machine; empty for every kind
     */
    public void law(String region, String kind, LocalDate from, int months, String source) {
        refuseMonths(months, MOST);
        String place = region.strip().toUpperCase(Locale.ROOT);
        if (!place.matches("[A-Z]{2}-[A-Z0-9]{1,3}")) {
            throw Refusal.of("tax.region-shape").at("region").thrown();
        }
        if (!kind.isEmpty() && catalogue.catalogue().findKind(kind).isEmpty()) {
            throw Refusal.of("typed.choose").at("kind").thrown();
        }
        if (source.strip().length() < SHORTEST_SOURCE) {
            throw Refusal.of("estimate.source-missing").at("source").thrown();
        }
        rows.createNativeQuery("insert into legal_warranty (region, kind, from_day, months, source)"
                        + " values (:region, :kind, :from, :months, :source)")
                .setParameter("region", place)
                .setParameter("kind", kind)
                .setParameter("from", from)
                .setParameter("months", months)
                .setParameter("source", source.strip())
                .executeUpdate();
    }

    /** By kind of work, the newest first. */
    public List<Guarantee> ours() {
        return read("select work as of, '' as kind, from_day, months, '' as source from labour_guarantee"
                + " order by work desc, from_day desc");
    }

    /** By part, the newest first. */
    public List<Guarantee> ofParts() {
        return read("select part_code as of, '' as kind, from_day, months, basis as source from part_warranty"
                + " order by part_code, from_day desc");
    }

    /** By place and kind of machine, the newest first. */
    public List<Guarantee> ofLaw() {
        return read("select region as of, kind, from_day, months, source from legal_warranty"
                + " order by region, kind, from_day desc");
    }

    private static void refuseMonths(int months, int most) {
        if (months < 0 || months > most) {
            throw Refusal.of("typed.between", java.util.Map.of("least", 0, "most", most))
                    .at("months")
                    .thrown();
        }
    }

    @SuppressWarnings("unchecked")
    private List<Guarantee> read(String sql) {
        List<Tuple> found = rows.createNativeQuery(sql, Tuple.class).getResultList();
        return found.stream()
                .map(row -> new Guarantee(
                        row.get("of", String.class),
                        row.get("kind", String.class),
                        row.get("from_day", LocalDate.class),
                        row.get("months", Integer.class),
                        row.get("source", String.class)))
                .toList();
    }
}
