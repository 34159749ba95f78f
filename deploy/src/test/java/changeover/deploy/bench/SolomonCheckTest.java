package changeover.deploy.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The judge of the routes' bench can say no, and knows the published cases again. */
class SolomonCheckTest {
    private static final String CASE = """
            SMALL

            VEHICLE
            NUMBER     CAPACITY
              2         30

            CUSTOMER
            CUST NO.  XCOORD.   YCOORD.    DEMAND   READY TIME  DUE DATE   SERVICE   TIME

                0      0         0          0          0        100          0
                1      3         4         10          0         50         10
                2      6         8         20         20         30         10
                3      1         1         10          0          1         10
            """;

    @Test
    void a_distance_is_cut_to_one_decimal() throws SolomonFile.NotInFormat {
        SolomonFile small = SolomonFile.read(CASE.getBytes(StandardCharsets.UTF_8));
        assertEquals(50, small.tenths(0, 1));
        assertEquals(14, small.tenths(0, 3));
        assertEquals(36, small.tenths(1, 3));
    }

    @Test
    void every_rule_of_the_case_is_judged() throws SolomonFile.NotInFormat {
        String opensLater = CASE.replace(" 0          1 ", " 0         10 ");
        check(opensLater, List.of(List.of(1, 2), List.of(3)), 228, "");
        check(CASE, List.of(List.of(1, 2), List.of(3)), 228, "customer 3 is reached after its due date");
        check(opensLater, List.of(List.of(3, 1, 2)), 200, "the vehicle that ends at customer 2 is too full");
        check(opensLater, List.of(List.of(3), List.of(2, 1)), 228, "");
        check(opensLater, List.of(List.of(1, 2)), 200, "customer 3 is visited 0 times");
        check(opensLater, List.of(List.of(1), List.of(2), List.of(3)), 328, "3 vehicles drive of 2");
        check(opensLater.replace("100", " 44"), List.of(List.of(1, 2), List.of(3)), 228, "");
        check(
                opensLater.replace("100", " 39"),
                List.of(List.of(1, 2), List.of(3)),
                228,
                "the vehicle that ends at customer 2 is back too late");
    }

    @Test
    void the_published_cases_are_known_by_their_figures() throws Exception {
        BestKnown table = BestKnown.table();
        assertEquals(Optional.of(6171L), table.of(SolomonFile.shipped("R101")));
        assertEquals(Optional.of(1913L), table.of(SolomonFile.shipped("C101")));
        assertEquals(Optional.of(4611L), table.of(SolomonFile.shipped("RC101")));
        assertEquals(Optional.of(4633L), table.of(SolomonFile.shipped("R201")));
        SolomonFile r101 = SolomonFile.shipped("R101");
        assertEquals(
                Optional.empty(),
                table.of(new SolomonFile(r101.name(), r101.vehicles(), r101.room() + 1, r101.places())));
    }

    @Test
    void a_text_that_is_no_case_is_told_why() {
        refused("", "it has no name, VEHICLE and CUSTOMER in their places");
        refused(CASE.replace("VEHICLE", "VANS"), "it has no name, VEHICLE and CUSTOMER in their places");
        refused(
                CASE.replace("6         8 ", "six       8 "),
                "its line \"2      six       8         20         20         30         10\" is not 7 figures");
        refused(
                CASE.replace("20         30 ", "20         10 "),
                "its line \"2      6         8         20         20         10         10\" is due before it is ready");
        refused(
                CASE.replace("    3      1", "    4      1"),
                "its line \"4      1         1         10          0          1         10\" should be number 3");
    }

    private static void check(String text, List<List<Integer>> routes, long tenths, String broken)
            throws SolomonFile.NotInFormat {
        SolomonCheck check = SolomonCheck.of(SolomonFile.read(text.getBytes(StandardCharsets.UTF_8)), routes);
        assertEquals(broken, check.broken().orElse(""));
        assertEquals(tenths, check.tenths());
    }

    private static void refused(String text, String why) {
        assertEquals(
                why,
                assertThrows(
                                SolomonFile.NotInFormat.class,
                                () -> SolomonFile.read(text.getBytes(StandardCharsets.UTF_8)))
                        .getMessage());
    }
}
