package changeover.web.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jakarta.ws.rs.core.MultivaluedHashMap;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures as people write them in either language; what may mean two things is asked for again. */
class TypedTest {

    private static final Currency CAD = Currency.getInstance("CAD");

    @Test
    void amounts_in_either_language() {
        money("286.29", "286.29");
        money("286,29", "286.29");
        money("1 250,50", "1250.50");
        money("1\u00a0250,50\u00a0$", "1250.50");
        money("$1,250.50", "1250.50");
        money("1,250,000", "1250000.00");
        money("1250", "1250.00");
        money("0,125", "typed.cents");
    }

    @Test
    void what_may_be_thousands_or_thousandths_is_refused() {
        money("1,000", "typed.twofold");
        money("2,500", "typed.twofold");
        money("12,345 $", "typed.twofold");
    }

    @Test
    void what_is_no_number_is_refused() {
        for (String written :
                new String[] {"10,000,00", "12,345,6", "5%0", "5 0", "1.250,50", "1e3", "--5", ",5", "5."}) {
            money(written, "typed.number");
        }
    }

    @Test
    void a_quantity_may_have_three_decimals_after_a_comma() {
        var typed = typed("1,375");
        assertEquals(new BigDecimal("1.375"), typed.number("a", BigDecimal.ZERO, BigDecimal.TEN));
    }

    @Test
    void a_reference_holds_no_mark_that_turns_the_writing() {
        var typed = typed("INV-\u202E0012");
        assertEquals(null, typed.line("a", 140));
        assertEquals("text.turns", typed.refusals().getFirst().code());
        assertEquals("INV-0012", typed("INV-0012").line("a", 140));
    }

    private static void money(String written, String expected) {
        Typed typed = typed(written);
        String read = typed.money("a", CAD).decimal();
        assertEquals(
                expected,
                typed.refusals().isEmpty() ? read : typed.refusals().getFirst().code(),
                written);
    }

    private static Typed typed(String written) {
        var fields = new MultivaluedHashMap<String, String>();
        fields.add("a", written);
        return new Typed(fields);
    }

    @Test
    void a_day_is_of_our_age_and_a_machine_may_be_older() {
        for (String day : new String[] {"1900-01-01", "1949-12-31", "2201-01-01", "9998-12-31"}) {
            Typed typed = typed(day);
            typed.day("a");
            assertEquals("typed.age", typed.refusals().getFirst().code(), day);
        }
        for (String day : new String[] {"1950-01-01", "2200-12-31"}) {
            assertEquals(day, typed(day).day("a").toString());
        }
        assertEquals(LocalDate.of(1938, 5, 1), typed("1938-05-01").installedOrNone("a"));
        Typed older = typed("1899-12-31");
        older.installedOrNone("a");
        assertEquals("typed.age", older.refusals().getFirst().code());
        assertEquals(
                Map.of("first", "1900", "last", "2200"),
                older.refusals().getFirst().facts());
    }
}
