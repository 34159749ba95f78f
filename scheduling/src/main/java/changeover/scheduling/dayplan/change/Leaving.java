package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** A technician leaves: what has a day after their last one is handed to others or goes back to the season. */
@ApplicationScoped
public class Leaving {

    private static final String LEFT = """
            select a.visit_id, a.day, a.starts, a.second, concat_ws(', ', h.street, h.unit_label, h.city) as home,
              exists (select 1 from hour_standing t where t.tenant_id = a.tenant_id and t.visit_id = a.visit_id
                and t.day = a.day and t.starts = a.starts) as told
            from (select tenant_id, visit_id, technician_id, day, starts, false as second from appointment
              union all
              select tenant_id, visit_id, technician_id, day, starts, true from appointment_second) a
            join visit v on v.tenant_id = a.tenant_id and v.id = a.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            where a.technician_id = :person and a.day > :last
              and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
            order by a.day, a.starts, a.visit_id
            """;

    /**
     * A visit of theirs after their last day.
     *
     * @param along whether they only go along: whoever leads keeps it, and wants somebody else
     */
    public record Left(UUID visit, LocalDate day, LocalTime starts, String home, boolean told, boolean along) {}

    /** A day that was shared out. */
    public record Handed(LocalDate day, List<SharedOut.Share> shares) {}

    @Inject
    EntityManager rows;

    @Inject
    Absences absences;

    @SuppressWarnings("unchecked")
    public List<Left> left(UUID person, LocalDate last) {
        List<Tuple> found = rows.createNativeQuery(LEFT, Tuple.class)
                .setParameter("person", person)
                .setParameter("last", last)
                .getResultList();
        return found.stream()
                .map(row -> new Left(
                        row.get("visit_id", UUID.class),
                        row.get("day", LocalDate.class),
                        row.get("starts", LocalTime.class),
                        row.get("home", String.class),
                        row.get("told", Boolean.class),
                        row.get("second", Boolean.class)))
                .toList();
    }

    /**
     * Hands over all of it, a day at a time: whoever was told an hour keeps it with another technician, nobody else is moved, and
     * what finds no place goes back to the season. Whoever must hear of it is listed to be rung.
     *
     * @param why in the words of who writes it: it is kept with every visit
     */
    public List<Handed> handOver(UUID person, LocalDate last, String why) {
        List<Left> left = left(person, last);
        if (left.isEmpty()) {
            throw Refusal.of("leaving.nothing-left").thrown();
        }
        var handed = new ArrayList<Handed>();
        left.stream()
                .map(Left::day)
                .distinct()
                .forEach(day -> handed.add(new Handed(day, absences.shareOut(day, person, why))));
        rows.createNativeQuery("delete from appointment_second where technician_id = :person and day > :last")
                .setParameter("person", person)
                .setParameter("last", last)
                .executeUpdate();
        return handed;
    }
}
