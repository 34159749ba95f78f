package changeover.billing.costs;

import changeover.billing.costs.KeptVisit.How;
import changeover.billing.pricing.CostSpread;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The visits that were made for agreements, with what they took and gave; and what was given between them. */
@ApplicationScoped
public class KeptVisits {

    private static final LocalDate EVER = LocalDate.of(1900, 1, 1);

    @Inject
    AgroalDataSource datasource;

    /** Accepted agreements and the visits made for them. */
    public record Kept(Collection<Deal> deals, List<KeptVisit> visits) {}

    public Kept until(LocalDate day) {
        return between(EVER, day);
    }

    /** The visits since the first of the terms that hold on the day began, whichever agreements they were made for. */
    public Kept ofTerms(LocalDate day) {
        return between(
                deals().stream()
                        .filter(deal -> deal.holds(day))
                        .map(deal -> deal.term().from())
                        .min(Comparator.naturalOrder())
                        .orElse(day),
                day);
    }

    /** @param until the last day, in */
    public Kept between(LocalDate from, LocalDate until) {
        try (Connection connection = datasource.getConnection()) {
            Map<UUID, Deal> deals = DealRows.all(connection);
            List<KeptVisit> visits = new KeptVisitRows(connection, from, until).visits(deals);
            visits.addAll(SentParts.between(connection, from, until, deals));
            visits.sort(Comparator.comparing(KeptVisit::day));
            return new Kept(List.copyOf(deals.values()), List.copyOf(visits));
        } catch (SQLException cause) {
            throw new IllegalStateException("the kept visits could not be read", cause);
        }
    }

    /** Every accepted agreement, by its number. */
    public Collection<Deal> deals() {
        try (Connection connection = datasource.getConnection()) {
            return DealRows.all(connection).values();
        } catch (SQLException cause) {
            throw new IllegalStateException("the agreements could not be read", cause);
        }
    }

    /** Every closed visit of a plan up to the day, for a spread. */
    List<CostSpread.Past> past(LocalDate day, int setUpMinutes) {
        List<KeptVisit> visits = until(day).visits();
        Map<UUID, Integer> again = new HashMap<>();
        Map<UUID, List<KeptVisit.Given>> between = between(visits);
        visits.stream()
                .filter(visit -> visit.how() == How.RETURN && visit.answers() != null)
                .forEach(visit -> again.merge(Objects.requireNonNull(visit.answers()), visit.actual(), Integer::sum));
        return visits.stream()
                .filter(visit -> visit.how() == How.PLANNED && visit.foreseen(setUpMinutes) > 0)
                .map(visit -> new CostSpread.Past(
                        visit.kinds().keySet(),
                        visit.foreseen(setUpMinutes),
                        visit.actual(),
                        parts(visit, between.getOrDefault(visit.deal().agreementId(), List.of())),
                        again.get(visit.visitId())))
                .toList();
    }

    /** What was given between an agreement's visits, as much of it for each of those that were made. */
    private static Map<UUID, List<KeptVisit.Given>> between(List<KeptVisit> visits) {
        Map<UUID, Long> made = visits.stream()
                .filter(visit -> visit.how() == How.PLANNED)
                .collect(Collectors.groupingBy(visit -> visit.deal().agreementId(), Collectors.counting()));
        return visits.stream()
                .filter(visit -> visit.how() == How.SENT)
                .collect(Collectors.groupingBy(
                        visit -> visit.deal().agreementId(),
                        Collectors.flatMapping(
                                sent -> sent.parts().stream()
                                        .map(part -> part.share(
                                                made.getOrDefault(sent.deal().agreementId(), 1L))),
                                Collectors.toList())));
    }

    /** What the visit gave of its share of the term's parts, by kind; none is an answer too. */
    private static Map<String, BigDecimal> parts(KeptVisit visit, List<KeptVisit.Given> between) {
        Map<String, BigDecimal> shares = new HashMap<>();
        visit.deal().parts().forEach((kind, aTerm) -> {
            BigDecimal gave = Stream.concat(visit.parts().stream(), between.stream())
                    .filter(part -> part.kind().equals(kind))
                    .map(KeptVisit.Given::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            shares.put(kind, gave.divide(visit.share(aTerm), 4, RoundingMode.HALF_UP));
        });
        return shares;
    }
}
