package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** What befalls one business forgets no other's search. */
class SearchesAtHandTest {

    private static final UUID OURS = new UUID(1, 1);
    private static final UUID THEIRS = new UUID(1, 2);
    private static final UUID RUN = new UUID(2, 1);
    private static final Supplier<Search> BEGIN = () -> new Search(new SeasonCase(
            List.of(), List.of(), List.of(), Roads.of(null), Map.of(), Roads.UNKNOWN, LocalDate.of(2027, 5, 3)));

    @Test
    void a_business_that_failed_begins_anew_and_the_others_go_on() {
        var searches = new SearchesAtHand();
        Search ours = searches.of(OURS, RUN, BEGIN);
        Search theirs = searches.of(THEIRS, RUN, BEGIN);
        assertNotSame(ours, theirs);
        searches.forget(OURS);
        assertSame(theirs, searches.of(THEIRS, RUN, BEGIN));
        assertNotSame(ours, searches.of(OURS, RUN, BEGIN));
        assertNotSame(theirs, searches.of(THEIRS, new UUID(2, 2), BEGIN));
    }
}
