package changeover.contracts.oldsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What people once wrote, and what is read of it. */
class WrittenTest {

    private static void day(String written, @Nullable DayOrder order, String read) {
        String said = switch (WrittenDay.read(written, order)) {
            case WrittenDay.On(LocalDate day) -> day.toString();
            case WrittenDay.Within(LocalDate first) -> "within " + first;
            case WrittenDay.Twofold(LocalDate one, LocalDate other) -> one + " or " + other;
            case WrittenDay.Unreadable _ -> "unreadable";
        };
        assertEquals(read, said, written);
    }

    @Test
    void a_day_in_numbers_is_read_where_it_can_be_one_day_only() {
        day("2026-03-04", null, "2026-03-04");
        day("2026/3/4", null, "2026-03-04");
        day("2026-03-04 00:00:00", null, "2026-03-04");
        day("20260304", null, "2026-03-04");
        day("25/03/2026", null, "2026-03-25");
        day("03/25/2026", null, "2026-03-25");
        day("04/04/2026", null, "2026-04-04");
        day("03/25/2026", DayOrder.DAY, "2026-03-25");
        day("31/12/99", null, "1999-12-31");
    }

    @Test
    void a_day_that_may_be_two_is_asked_for_and_read_as_it_was_said() {
        day("04/03/2026", null, "2026-03-04 or 2026-04-03");
        day("04/03/2026", DayOrder.DAY, "2026-03-04");
        day("04/03/2026", DayOrder.MONTH, "2026-04-03");
        day("26-03-04", null, "2004-03-26 or 2026-03-04");
        day("26-03-04", DayOrder.YEAR, "2026-03-04");
    }

    @Test
    void days_in_words_of_both_languages_are_read() {
        day("4 mars 2026", null, "2026-03-04");
        day("1er août 2025", null, "2025-08-01");
        day("le 14 févr. 2024", null, "2024-02-14");
        day("lundi 2 mars 2026", null, "2026-03-02");
        day("March 4, 2026", null, "2026-03-04");
        day("Mon, Mar 2nd 2026", null, "2026-03-02");
        day("4-Mar-26", null, "2026-03-04");
        day("15 sept 2025", null, "2025-09-15");
        day("3 jui 2025", null, "unreadable");
    }

    @Test
    void a_month_or_a_year_alone_is_no_whole_day() {
        day("mars 2015", null, "within 2015-03-01");
        day("06/2015", null, "within 2015-06-01");
        day("2015-06", null, "within 2015-06-01");
        day("2012", null, "within 2012-01-01");
        day("31/02/2026", null, "unreadable");
        day("13/13/2026", null, "unreadable");
        day("bientôt", null, "unreadable");
        day("1850-01-01", null, "unreadable");
    }

    private static void price(String written, @Nullable String read) {
        assertEquals(read, WrittenPrice.read(written).map(Object::toString).orElse(null), written);
    }

    @Test
    void an_amount_is_read_where_it_can_be_one_only() {
        price("249", "249");
        price("249,00 $", "249.00");
        price("$1,249.50", "1249.50");
        price("1 249,50\u00a0$", "1249.50");
        price("1.249,50", "1249.50");
        price("CAD 249.5", "249.5");
        price("1,000", null);
        price("1.000", null);
        price("-20", null);
        price("gratuit", null);
    }

    @Test
    void telephones_come_in_one_style_and_what_is_none_stays() {
        for (String one : Arrays.asList(
                "514 555-0142", "(514) 555-0142", "514.555.0142", "5145550142", "+1 514 555 0142", "1-514-555-0142")) {
            assertEquals(new WrittenTelephone.Read("514-555-0142", true), WrittenTelephone.read(one), one);
        }
        assertEquals(
                new WrittenTelephone.Read("514-555-0142 ext 12", true), WrittenTelephone.read("514 555-0142 poste 12"));
        assertEquals(new WrittenTelephone.Read("555-0142", false), WrittenTelephone.read(" 555-0142 "));
    }

    private static void word(String expected, @Nullable String read) {
        assertEquals(expected, read == null ? "" : read);
    }

    @Test
    void languages_provinces_and_postal_codes_are_known_by_words_and_by_codes() {
        for (String one : Arrays.asList("fr", "F", "Français", "francophone", "FRENCH", " Anglais ")) {
            word(
                    one.equals(" Anglais ") ? "en" : "fr",
                    WrittenWords.language(one).orElse(null));
        }
        word("", WrittenWords.language("both").orElse(null));
        for (String one : Arrays.asList("QC", "Québec", "quebec", "P.Q.", "Qué.")) {
            word("QC", WrittenWords.region(one, "CA").orElse(null));
        }
        word("ON", WrittenWords.region("Ont.", "CA").orElse(null));
        word("NB", WrittenWords.region("Nouveau-Brunswick", "CA").orElse(null));
        word("", WrittenWords.region("Vermont", "CA").orElse(null));
        word("VT", WrittenWords.region("vt", "US").orElse(null));
        word("H2X 1Y4", WrittenWords.postal("h2x1y4", "CA").orElse(null));
        word("K0X 0X0", WrittenWords.postal("K0X-0X0", "CA").orElse(null));
        word("", WrittenWords.postal("H2X 1Y", "CA").orElse(null));
    }
}
