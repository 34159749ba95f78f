package changeover.billing.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A short run is seen to go on too; a long one keeps batches of a hundred. */
class BatchesTest {

    @Test
    void a_tenth_of_the_run_between_five_and_a_hundred() {
        check(0, "");
        check(3, "3");
        check(12, "5 5 2");
        check(60, "6 6 6 6 6 6 6 6 6 6");
        check(151, "16 16 16 16 16 16 16 16 16 7");
        check(1_050, "100 100 100 100 100 100 100 100 100 100 50");
        assertEquals(100, Batches.of(drafts(10_000, null)).batches().size());
    }

    @Test
    void one_payers_paper_is_not_torn() {
        UUID payer = new UUID(7, 7);
        List<Batches.Ready> drafts = Stream.concat(drafts(30, payer).stream(), drafts(20, null).stream())
                .toList();
        assertEquals(
                List.of(30, 5, 5, 5, 5),
                Batches.of(drafts).batches().stream().map(List::size).toList());
    }

    private static void check(int drafts, String sizes) {
        assertEquals(
                sizes,
                Batches.of(drafts(drafts, null)).batches().stream()
                        .map(batch -> String.valueOf(batch.size()))
                        .collect(Collectors.joining(" ")));
    }

    private static List<Batches.Ready> drafts(int count, UUID togetherFor) {
        return IntStream.range(0, count)
                .mapToObj(at -> new Batches.Ready(new UUID(count, at), togetherFor))
                .toList();
    }
}
