package changeover.scheduling.stopped;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import changeover.contracts.words.Wording;
import changeover.scheduling.stopped.MachineStop.Correction;
import changeover.scheduling.stopped.MachineStop.Done;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;

/** What was said of stops since they began: duties that were done, duties that the office added, tickets that it corrected. */
record StopsBeside(Map<UUID, List<Done>> done, Map<UUID, List<Added>> added, Map<UUID, List<Correction>> corrections) {

    private static final String DONE = """
            select stop_id, code, who, day, words from stop_duty_done
             where tenant_id = current_tenant() and stop_id in (:stops) order by at, id""";

    private static final String ADDED = """
            select stop_id, id, words, office, due, source from stop_duty
             where tenant_id = current_tenant() and stop_id in (:stops) order by due, id""";

    private static final String CORRECTED = """
            select c.stop_id, c.ticket, c.why, coalesce(m.name, '') as name, c.at from stop_ticket c
              left join membership m on (m.tenant_id, m.person_id) = (c.tenant_id, c.person_id)
             where c.tenant_id = current_tenant() and c.stop_id in (:stops) order by c.at, c.id""";

    /** What was said of one stop. */
    record Beside(List<Correction> corrections, List<StopDuty> added, List<Done> done) {}

    /** A duty in the office's own words. */
    record Added(UUID id, String words, boolean office, LocalDate due, String source) {

        StopDuty since(LocalDate stopped) {
            return new StopDuty(
                    id.toString(),
                    StopDuty.EVERYWHERE,
                    null,
                    null,
                    null,
                    office ? StopDuty.OFFICE : StopDuty.WHOEVER,
                    (int) ChronoUnit.DAYS.between(stopped, due),
                    new Wording(words, words),
                    new Wording(source, source),
                    true);
        }
    }

    static StopsBeside of(EntityManager rows, List<UUID> stops) {
        return stops.isEmpty()
                ? new StopsBeside(Map.of(), Map.of(), Map.of())
                : new StopsBeside(
                        read(
                                rows,
                                DONE,
                                stops,
                                row -> new Done(
                                        row.get("code", String.class),
                                        row.get("who", String.class),
                                        row.get("day", LocalDate.class),
                                        row.get("words", String.class))),
                        read(
                                rows,
                                ADDED,
                                stops,
                                row -> new Added(
                                        row.get("id", UUID.class),
                                        row.get("words", String.class),
                                        row.get("office", Boolean.class),
                                        row.get("due", LocalDate.class),
                                        row.get("source", String.class))),
                        read(
                                rows,
                                CORRECTED,
                                stops,
                                row -> new Correction(
                                        row.get("ticket", String.class),
                                        row.get("why", String.class),
                                        row.get("name", String.class),
                                        row.get("at", Instant.class))));
    }

    Beside of(UUID stop, LocalDate day) {
        return new Beside(
                corrections.getOrDefault(stop, List.of()),
                added.getOrDefault(stop, List.of()).stream()
                        .map(one -> one.since(day))
                        .toList(),
                done.getOrDefault(stop, List.of()));
    }

    @SuppressWarnings("unchecked")
    private static <T> Map<UUID, List<T>> read(
            EntityManager rows, String sql, List<UUID> stops, Function<Tuple, T> said) {
        List<Tuple> found = rows.createNativeQuery(sql, Tuple.class)
                .setParameter("stops", stops)
                .getResultList();
        return found.stream().collect(groupingBy(row -> row.get("stop_id", UUID.class), mapping(said, toList())));
    }
}
