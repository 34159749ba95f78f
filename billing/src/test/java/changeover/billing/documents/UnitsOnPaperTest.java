package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.invoices.DraftsByHand;
import changeover.contracts.catalogue.TradeUnit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every unit that a line or a part may be counted in has words in both languages; none is printed by its code. */
class UnitsOnPaperTest {

    @Test
    void every_unit_has_words_in_both_languages() {
        for (Locale locale : List.of(Locale.CANADA, Locale.CANADA_FRENCH)) {
            Words words = Words.in(locale);
            List<String> without = Stream.concat(
                            Stream.of(TradeUnit.values()).map(TradeUnit::code), DraftsByHand.UNITS.stream())
                    .filter(code -> !words.knows("unit." + code))
                    .toList();
            assertEquals(List.of(), without, locale.toString());
        }
    }
}
