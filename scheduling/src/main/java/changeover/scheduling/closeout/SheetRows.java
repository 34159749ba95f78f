package changeover.scheduling.closeout;

import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.Measured;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.Photographed;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Keeps the rows of a visit as its sheet says: what no longer stands goes, what is new comes, the rest is not touched. */
@ApplicationScoped
class SheetRows {

    @Inject
    EntityManager rows;

    /** A row to be: equal facts under the same id are the same row. */
    private record Line(UUID id, List<?> facts, Object row) {

        boolean sameAs(Line other) {
            return id.equals(other.id) && facts.equals(other.facts);
        }
    }

    void follow(VisitAtHand visit, Sheet before, Sheet now, UUID van, LocalDate day) {
        replace(
                TaskOutcome.class,
                before,
                now,
                sheet -> sheet.each(
                        TaskAnswered.class,
                        (taken, answered) ->
                                new Line(taken.id(), List.of(), TaskOutcome.of(taken.id(), visit.id(), answered))));
        replace(
                Reading.class,
                before,
                now,
                sheet -> JudgedReading.of(visit, sheet).stream()
                        .map(judged -> new Line(judged.id(), List.of(judged), Reading.of(visit, judged, day)))
                        .toList());
        nameInstruments(visit.id(), now);
        replace(
                Finding.class,
                before,
                now,
                sheet -> sheet.each(
                        Found.class,
                        (taken, found) -> new Line(
                                taken.id(),
                                List.of(),
                                Finding.of(taken.id(), visit, found, ticket(visit, found), day))));
        replace(
                Photo.class,
                before,
                now,
                sheet -> sheet.each(Photographed.class, (taken, photo) -> {
                    UUID finding =
                            photo.finding() != null && sheet.of(photo.finding()).isPresent() ? photo.finding() : null;
                    return new Line(
                            taken.id(), Arrays.asList(finding), Photo.of(taken.id(), visit.id(), photo, finding));
                }));
        replace(
                PartUsed.class,
                before,
                now,
                sheet -> sheet.each(
                        PartTaken.class,
                        (taken, part) -> new Line(
                                taken.id(),
                                List.of(),
                                PartUsed.of(taken.id(), visit.id(), part, part.place() == null ? van : part.place()))));
        rows.flush();
    }

    /** What a reading was taken with is kept as it was called then, with the last day of the calibration that it had. */
    private void nameInstruments(UUID visit, Sheet sheet) {
        boolean any = sheet.each(Measured.class, (_, measured) -> measured).stream()
                .anyMatch(measured -> measured.instrument() != null);
        if (any) {
            rows.createNativeQuery("""
                            update reading r set instrument = i.name || ', ' || i.serial, instrument_until = (
                                select c.until_day from instrument_calibration c
                                 where c.tenant_id = i.tenant_id and c.instrument_id = i.id and c.day <= r.day
                                 order by c.day desc, c.id desc limit 1)
                              from instrument i
                             where i.tenant_id = r.tenant_id and i.id = r.instrument_id and r.visit_id = :visit
                               and r.instrument is null""").setParameter("visit", visit).executeUpdate();
        }
    }

    private void replace(Class<?> entity, Sheet before, Sheet now, Function<Sheet, List<Line>> made) {
        List<Line> stood = made.apply(before);
        List<Line> stands = made.apply(now);
        Set<UUID> gone = new HashSet<>();
        stood.stream().filter(line -> stands.stream().noneMatch(line::sameAs)).forEach(line -> gone.add(line.id()));
        if (!gone.isEmpty()) {
            rows.createQuery("delete from " + entity.getSimpleName() + " where id in :gone")
                    .setParameter("gone", gone)
                    .executeUpdate();
        }
        stands.stream()
                .filter(line -> stood.stream().noneMatch(line::sameAs))
                .forEach(line -> rows.persist(line.row()));
        rows.flush();
    }

    /** Who may restore it: as said, else as its task asks. */
    static @Nullable String ticket(VisitAtHand visit, Found found) {
        if (found.ticket() != null || found.task() == null) {
            return found.ticket();
        }
        TaskAtHand task = visit.tasks().get(found.task());
        return task == null ? null : task.ticket();
    }

    /** Everything read and found at a visit carries the day on which it was closed. */
    void date(UUID visitId, LocalDate day) {
        for (String entity : List.of("Reading", "Finding")) {
            rows.createQuery("update " + entity + " set day = :day where visitId = :visit and day <> :day")
                    .setParameter("day", day)
                    .setParameter("visit", visitId)
                    .executeUpdate();
        }
    }
}
