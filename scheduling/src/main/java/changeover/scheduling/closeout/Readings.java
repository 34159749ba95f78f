package changeover.scheduling.closeout;

import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Standing;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.ReportFacts.Last;
import changeover.scheduling.closeout.ReportFacts.ReadingFact;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What was measured at the homes of the current business. */
@ApplicationScoped
public class Readings {

    @Inject
    EntityManager rows;

    /** A reading of a machine. */
    public record Of(UUID equipmentId, String code) {}

    public List<Reading> ofVisit(UUID visitId) {
        return rows.createQuery("from Reading where visitId = :visit order by id", Reading.class)
                .setParameter("visit", visitId)
                .getResultList();
    }

    /** Every reading of a machine, newest first. */
    public List<Reading> ofMachine(UUID equipmentId, int most) {
        return rows.createQuery("from Reading where equipmentId = :machine order by day desc, id desc", Reading.class)
                .setParameter("machine", equipmentId)
                .setMaxResults(most)
                .getResultList();
    }

    /** "Last time it was": the newest reading of each code of these machines, of visits other than this one. */
    public Map<Of, Reading> last(Collection<UUID> machines, UUID exceptVisit) {
        Map<Of, Reading> last = new HashMap<>();
        if (!machines.isEmpty()) {
            rows.createQuery(
                            "from Reading r where r.equipmentId in :machines and r.visitId <> :visit and r.day ="
                                    + " (select max(o.day) from Reading o where o.equipmentId = r.equipmentId"
                                    + " and o.code = r.code and o.visitId <> :visit) order by r.id",
                            Reading.class)
                    .setParameter("machines", machines)
                    .setParameter("visit", exceptVisit)
                    .getResultList()
                    .forEach(reading -> reading.equipmentId()
                            .ifPresent(machine -> last.put(new Of(machine, reading.code()), reading)));
        }
        return last;
    }

    List<ReadingFact> facts(VisitAtHand visit) {
        List<Reading> read = ofVisit(visit.id());
        Map<Of, Reading> before = last(
                read.stream()
                        .flatMap((Reading one) -> one.equipmentId().stream())
                        .distinct()
                        .toList(),
                visit.id());
        return read.stream().map(reading -> fact(reading, visit, before)).toList();
    }

    private static ReadingFact fact(Reading reading, VisitAtHand visit, Map<Of, Reading> before) {
        Optional<ReadingSpec> spec = visit.task(reading.visitTaskId()).flatMap(task -> task.reading(reading.code()));
        UUID machine = reading.equipmentId().orElse(null);
        Reading last = machine == null ? null : before.get(new Of(machine, reading.code()));
        return new ReadingFact(
                reading.id(),
                machine,
                visit.machineName(machine),
                reading.code(),
                spec.map(ReadingSpec::wording).orElse(new Wording(reading.code(), reading.code())),
                reading.runningState().orElse(null),
                reading.enteredValue(),
                reading.enteredUnit().orElse(null),
                reading.value().orElse(null),
                reading.unit().orElse(null),
                reading.low().orElse(null),
                reading.high().orElse(null),
                reading.volts().orElse(null),
                standing(reading.standing()),
                reading.actOn(),
                reading.beyond().orElse(null),
                last == null ? null : last(last));
    }

    static Last last(Reading reading) {
        LocalDate day = reading.day();
        return new Last(day, reading.enteredValue(), reading.enteredUnit().orElse(null));
    }

    private static Standing standing(String code) {
        return Arrays.stream(Standing.values())
                .filter(standing -> standing.code().equals(code))
                .findFirst()
                .orElse(Standing.NOT_JUDGED);
    }
}
