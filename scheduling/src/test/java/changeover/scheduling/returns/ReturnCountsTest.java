package changeover.scheduling.returns;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Free returns by cause, part and kind, the most frequent first; by technician in the order of their names. */
class ReturnCountsTest {

    private static ReturnVisit one(ReturnCause cause, String part, String kind, String technician, int minutes) {
        return new ReturnVisit(
                UUID.randomUUID(),
                UUID.randomUUID(),
                UUID.randomUUID(),
                LocalDate.of(2026, 11, 2),
                technician,
                cause,
                part == null ? null : new Wording(part, part),
                kind,
                "Again no heat",
                LocalDate.of(2026, 11, 9),
                minutes);
    }

    private static void check(List<ReturnVisit> kept, String expected) {
        ReturnCounts counts = ReturnCounts.of(
                kept,
                visit -> visit.cause().code(),
                visit -> visit.part() == null ? null : visit.part().en(),
                ReturnVisit::kind);
        assertEquals(
                expected,
                counts.returns() + " " + counts.minutes() + " | " + lines(counts.causes()) + " | "
                        + lines(counts.parts()) + " | " + lines(counts.kinds()) + " | "
                        + lines(counts.technicians()));
    }

    private static String lines(List<ReturnCounts.Line> lines) {
        return lines.stream()
                .map(line -> line.of() + " " + line.returns() + "/" + line.minutes())
                .collect(Collectors.joining(", "));
    }

    @Test
    void the_cause_comes_first_and_nobody_is_ranked() {
        check(List.of(), "0 0 |  |  |  | ");
        check(
                List.of(
                        one(ReturnCause.SETTING, null, null, "Rufus Ashe", 20),
                        one(ReturnCause.PART, "Igniter", "furnace", "Rufus Ashe", 45),
                        one(ReturnCause.PART, "Igniter", "furnace", "Ida Roe", 30),
                        one(ReturnCause.PART, "Belt", "rooftop-unit", "Rufus Ashe", 60),
                        one(ReturnCause.OTHER, null, "furnace", "", 15)),
                "5 170 | part 3/135, other 1/15, setting 1/20 | Igniter 2/75, Belt 1/60"
                        + " | furnace 3/90, rooftop-unit 1/60 | Ida Roe 1/30, Rufus Ashe 3/125");
    }
}
