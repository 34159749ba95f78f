package changeover.scheduling.intervals;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.scheduling.intervals.Look.By;
import changeover.scheduling.intervals.Look.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class FilterLogTest {

    @Test
    void a_life_lies_between_the_last_clean_look_and_the_first_grey_one() {
        says("", "01-01 H CHANGED");
        says("clean 30", "01-01 H CHANGED", "01-31 H CLEAN");
        says("between 30 and 59", "01-01 H CHANGED", "01-31 H CLEAN", "03-01 H CHANGED_GREY");
        says("between 0 and 59", "01-01 H CHANGED", "03-01 H GREY", "03-20 H CHANGED_GREY");
        says(
                "between 30 and 59; clean 31",
                "01-01 H CHANGED",
                "01-31 H CLEAN",
                "03-01 T CHANGED_GREY",
                "04-01 T CLEAN");
        says("clean 59", "01-01 H CHANGED", "03-01 T CHANGED_CLEAN");
        says("clean 30", "01-01 H CHANGED", "01-31 H CLEAN", "03-01 H CHANGED");
    }

    @Test
    void what_was_seen_before_the_first_change_is_left_out() {
        says("", "01-01 H GREY", "01-10 H CLEAN");
        says("clean 20", "01-01 H CLEAN", "01-05 H CHANGED_GREY", "01-25 H CLEAN");
    }

    @Test
    void the_households_tick_and_the_technicians_record_of_one_change_count_once() {
        says(
                "between 0 and 59; clean 31",
                "01-01 T CHANGED",
                "03-01 T CHANGED_GREY",
                "03-03 H CHANGED",
                "04-01 H CLEAN");
        says(
                "between 0 and 59; clean 31",
                "01-01 T CHANGED",
                "02-27 H CHANGED",
                "03-01 T CHANGED_GREY",
                "04-01 H CLEAN");
        says("clean 59", "01-01 T CHANGED", "03-01 T CHANGED_CLEAN", "03-01 H CHANGED_GREY");
        says("between 0 and 59", "01-01 T CHANGED", "03-01 T CHANGED", "03-01 H CHANGED_GREY");
        says("between 0 and 59; between 0 and 4", "01-01 T CHANGED", "03-01 T CHANGED_GREY", "03-05 H CHANGED_GREY");
        says("between 0 and 59; between 0 and 2", "01-01 H CHANGED", "03-01 H CHANGED_GREY", "03-03 H CHANGED_GREY");
    }

    @Test
    void of_one_day_the_technicians_word_stands_and_the_look_comes_before_the_change() {
        says("between 0 and 59", "01-01 T CHANGED", "03-01 H CLEAN", "03-01 T GREY");
        says("clean 59", "01-01 T CHANGED", "03-01 H GREY", "03-01 T CLEAN");
        says("between 0 and 59; clean 31", "01-01 T CHANGED", "03-01 T GREY", "03-01 H CHANGED", "04-01 T CLEAN");
        says("between 0 and 59", "01-01 T CHANGED", "02-27 H CHANGED_GREY", "03-01 H CHANGED", "03-01 T CHANGED");
    }

    private static void says(String expected, String... records) {
        List<Look> looks = new ArrayList<>();
        for (String record : records) {
            String[] parts = record.split(" ", -1);
            looks.add(new Look(
                    LocalDate.parse("2027-" + parts[0]),
                    parts[1].equals("T") ? By.TECHNICIAN : By.HOUSEHOLD,
                    What.valueOf(parts[2])));
        }
        List<Seen> all = FilterLog.seen(looks);
        List<String> said = all.stream()
                .map(seen -> switch (seen) {
                    case Seen.GreyAt(double days) -> "grey " + (int) days;
                    case Seen.GreyBetween(double clean, double grey) -> "between " + (int) clean + " and " + (int) grey;
                    case Seen.CleanAt(double days) -> "clean " + (int) days;
                })
                .toList();
        assertEquals(expected, String.join("; ", said));
        Collections.reverse(looks);
        assertEquals(all, FilterLog.seen(looks), "the order in which records come in changes nothing");
    }
}
