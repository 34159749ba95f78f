package changeover.contracts.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Facts in a sentence are said as its reader writes them. */
class RefusalsTest {

    private static void check(Object fact, Locale locale, String expected) {
        String sentence = Refusals.sentence(Refusal.of("homesfile.too-many-rows", Map.of("most", fact)), locale);
        assertEquals(
                (locale.getLanguage().equals("fr") ? "Le fichier a plus de " : "The file has more than ") + expected,
                sentence.substring(0, sentence.indexOf(expected) + expected.length()));
    }

    @Test
    void amounts_and_figures_have_the_readers_sign() {
        check(Money.of("1234.50", "CAD"), Locale.ENGLISH, "$1,234.50");
        check(Money.of("1234.50", "CAD"), Locale.CANADA_FRENCH, "1\u00a0234,50\u00a0$");
        check(new BigDecimal("99.9"), Locale.ENGLISH, "99.9");
        check(new BigDecimal("99.9"), Locale.CANADA_FRENCH, "99,9");
        check(12, Locale.CANADA_FRENCH, "12");
        check(new Wording("ten", "dix"), Locale.CANADA_FRENCH, "dix");
    }

    @Test
    void a_refusal_reads_the_same_in_every_process() {
        assertEquals(
                "{day=4, last=3, price=2, said=1}",
                Refusal.of("brought.day", Map.of("said", 1, "price", 2, "last", 3, "day", 4))
                        .facts()
                        .toString());
    }
}
