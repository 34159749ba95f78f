package changeover.billing.costs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.costs.CostBook.Spot;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.Trip;
import changeover.scheduling.dayplan.routes.Drives;
import changeover.scheduling.dayplan.routes.Travel;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A trip costs the roads that the day is planned with: 20 minutes out and 25 back are 45, whatever a crow would fly. */
class CostBookTest {

    private static final Spot SHOP = spot(0);
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    private final List<Integer> questions = new ArrayList<>();

    private static Spot spot(int number) {
        return new Spot(BigDecimal.valueOf(46_000 + number, 3), BigDecimal.valueOf(-77));
    }

    /** Away from the place that stands first 1,200 seconds, towards it 1,499: a begun minute counts. */
    private Drives roads(List<Travel.Place> places) {
        questions.add(places.size());
        int[][] seconds = new int[places.size()][places.size()];
        for (int from = 0; from < places.size(); from++) {
            for (int to = 0; to < places.size(); to++) {
                seconds[from][to] = from == to ? 0 : from < to ? 1_200 : 1_499;
            }
        }
        return Drives.of(seconds);
    }

    private CostBook book() {
        return new CostBook(
                new PriceBook(List.of()), List.of(), List.of(), Currency.getInstance("CAD"), SHOP, this::roads);
    }

    @Test
    void a_trip_is_driven_by_the_roads_of_the_day() {
        assertEquals(new Trip.Driven(45), book().rates(DAY, spot(7)).trip());
        assertEquals(List.of(2), questions);
    }

    @Test
    void many_homes_are_asked_of_in_few_questions() {
        CostBook book = book();
        book.know(IntStream.rangeClosed(1, 120)
                .mapToObj(number -> spot(1 + number % 60))
                .toList());
        assertEquals(List.of(50, 12), questions);
        for (int number = 1; number <= 60; number++) {
            assertEquals(new Trip.Driven(45), book.rates(DAY, spot(number)).trip());
        }
        assertEquals(List.of(50, 12), questions);
    }
}
