package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * Drains, exchangers and humidifiers go first and homes with cooling readings when they can be taken: a visit with a reading has the
 * warm days alone, so where days are scarce those are left to it.
 */
class ReadingsWhenWarmTest {

    private static final LocalDate MONDAY = InventedSeasons.MONDAY;
    private static final Window WEEK = new Window(MONDAY, MONDAY.plusDays(5));
    private static final Window WARM = new Window(MONDAY.plusDays(2), MONDAY.plusDays(5));

    @Test
    void whatNeedsNoWarmthMakesRoomForWhatDoes() {
        List<Wanted> wanted = new ArrayList<>();
        for (int number = 0; number < 5; number++) {
            wanted.add(SearchTest.visit(number, number < 2 ? WEEK : WARM, 250, 1));
        }
        SeasonAnswer answer = SearchTest.answer(SearchTest.week(wanted, SearchTest.hand(new UUID(1, 1))));
        assertTrue(answer.allKept());
        assertEquals(
                5, answer.kept().stream().map(SeasonAnswer.Kept::day).distinct().count());
        answer.kept().stream()
                .filter(kept -> kept.visit().getLeastSignificantBits() < 2)
                .forEach(kept -> assertTrue(kept.day().isBefore(WARM.from()), kept.toString()));
    }
}
