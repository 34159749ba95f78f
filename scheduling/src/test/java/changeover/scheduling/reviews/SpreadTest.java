package changeover.scheduling.reviews;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.scheduling.reviews.Spread.Sample;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What one measures beside the middle of the others, by the alphabet. */
class SpreadTest {

    private static List<Sample> samples(String person, double... values) {
        List<Sample> samples = new ArrayList<>();
        for (double value : values) {
            samples.add(new Sample("amps", "A", person, BigDecimal.valueOf(value)));
        }
        return samples;
    }

    @SafeVarargs
    private static void check(String expected, List<Sample>... people) {
        List<Sample> all = new ArrayList<>();
        for (List<Sample> one : people) {
            all.addAll(one);
        }
        assertEquals(
                expected,
                Spread.of(all).stream()
                        .flatMap(spread -> spread.lines().stream())
                        .map(line -> line.person() + " " + line.count() + " " + number(line.own()) + " of "
                                + line.otherCount() + " " + number(line.others()))
                        .collect(Collectors.joining(", ")));
    }

    private static String number(BigDecimal value) {
        return value == null ? "-" : value.stripTrailingZeros().toPlainString();
    }

    @Test
    void names_stand_by_the_alphabet_whatever_they_measured() {
        check(
                "Ida 5 3 of 5 20, Rufus 5 20 of 5 3",
                samples("Rufus", 18, 19, 20, 21, 90),
                samples("Ida", 1, 2, 3, 4, 5));
    }

    @Test
    void too_few_say_nothing() {
        check("", samples("Ida", 1, 2, 3, 4), samples("Rufus", 1, 2, 3, 4, 5));
        check("", samples("Ida", 1, 2, 3, 4, 5, 6));
        check(
                "Ana 6 3.5 of 11 7, Ida 6 7 of 11 2, Rufus 5 0 of 12 6",
                samples("Ana", 1, 2, 3, 4, 5, 6),
                samples("Ida", 6, 7, 7, 7, 8, 9),
                samples("Rufus", 0, 0, 0, 0, 30));
    }
}
