package changeover.scheduling.closeout;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** With what the readings of a visit were taken, as they keep it themselves. */
@ApplicationScoped
public class ReadingInstruments {

    /**
     * An instrument as it was then.
     *
     * @param name with its serial number
     * @param until the last day of its calibration; null where none was known
     * @param over whether that was over on the reading's day
     */
    public record With(String name, @Nullable LocalDate until, boolean over) {}

    @Inject
    EntityManager rows;

    /** By reading; one of which nobody said it is missing. */
    @SuppressWarnings("unchecked")
    public Map<UUID, With> ofVisit(UUID visit) {
        List<Tuple> found = rows.createNativeQuery("""
                        select id, instrument, instrument_until, coalesce(instrument_until < day, true) as over from reading
                         where visit_id = :visit and instrument is not null""", Tuple.class)
                .setParameter("visit", visit)
                .getResultList();
        return found.stream()
                .collect(Collectors.toMap(
                        row -> row.get("id", UUID.class),
                        row -> new With(
                                row.get("instrument", String.class),
                                row.get("instrument_until", LocalDate.class),
                                row.get("over", Boolean.class))));
    }
}
