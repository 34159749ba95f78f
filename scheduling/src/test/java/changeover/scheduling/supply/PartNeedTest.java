package changeover.scheduling.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PartNeedTest {

    private static final Window YEAR = new Window(day("2027-01-01"), day("2028-01-01"));

    @Test
    void whatIsSureHasNoRange() {
        PartNeed need = need(List.of(sure("2027-09-01", "2027-10-01"), sure("2027-09-10", "2027-09-20")));
        check(need.year(), "2", "2", "2");
        assertEquals("{2027-09=Range[low=2, middle=2, high=2]}", need.months().toString());
        check(
                need(List.of(new Use.Sure(window("2027-05-01", "2027-05-02"), 500)))
                        .year(),
                "0.5",
                "0.5",
                "0.5");
        check(need(List.of()).year(), "0", "0", "0");
    }

    @Test
    void overTwoMonthsTheYearIsSureAndTheMonthsAreNot() {
        PartNeed need = need(Collections.nCopies(100, sure("2027-09-01", "2027-11-01")));
        check(need.year(), "100", "100", "100");
        Range september = need.months().values().iterator().next();
        // 100 days of 61 drawn: 49.2 of September, five up or down two times of three.
        assertTrue(september.low().intValue() >= 40 && september.high().intValue() <= 58, september.toString());
        assertTrue(september.low().compareTo(september.middle()) < 0);
    }

    @Test
    void aShareSeenInFewVisitsIsLessSureThanTheSameInMany() {
        Range few = need(Collections.nCopies(100, perhaps(1, 10))).year();
        Range many = need(Collections.nCopies(100, perhaps(20, 200))).year();
        // One of ten: two in twelve are expected after it, 16.7; of 21 in 202 10.4.
        assertTrue(many.middle().intValue() >= 8 && many.middle().intValue() <= 13, many.toString());
        assertTrue(width(few) >= width(many), few + " " + many);
    }

    /** By hand: put in on 1 December 2026, looked at after 30 days, changed after 60: sure lives of both kinds. */
    @Test
    void aFilterThatIsAlwaysGreyAtTheLookTakesTwiceAsMany() {
        LocalDate in = day("2026-12-01");
        check(rounds(in, 1.0), "13", "13", "13");
        check(rounds(in, 0.0), "6", "6", "6");
        Range doubtful = rounds(in, 0.5);
        assertTrue(doubtful.low().intValue() >= 6 && doubtful.high().intValue() <= 12, doubtful.toString());
        assertTrue(width(doubtful) > 0);
    }

    @Test
    void aRoundThatIsOverEndsOnTheFirstDay() {
        // 1 January, then every 60 days: 1 January, 2 March, 1 May, 30 June, 29 August, 28 October, 27 December.
        check(rounds(day("2020-01-01"), 0.0), "7", "7", "7");
    }

    @Test
    void theSameQuestionGivesTheSameAnswer() {
        List<Use> uses = Collections.nCopies(50, perhaps(3, 9));
        assertEquals(need(uses), need(uses));
    }

    private static Range rounds(LocalDate in, double greyAtLook) {
        return need(List.of(new Use.Rounds(in, List.of(30), 60, List.of(new double[] {greyAtLook}), 1000)))
                .year();
    }

    private static PartNeed need(List<Use> uses) {
        return PartNeed.of(uses, YEAR, 7);
    }

    private static Use sure(String from, String until) {
        return new Use.Sure(window(from, until), 1000);
    }

    private static Use perhaps(long took, long done) {
        return new Use.Perhaps(window("2027-04-01", "2027-06-01"), 1000, took, done);
    }

    private static int width(Range range) {
        return range.high().subtract(range.low()).intValue();
    }

    private static void check(Range range, String low, String middle, String high) {
        assertEquals(
                low + " " + middle + " " + high,
                range.low().toPlainString() + " " + range.middle().toPlainString() + " "
                        + range.high().toPlainString());
    }

    private static Window window(String from, String until) {
        return new Window(day(from), day(until));
    }

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }
}
