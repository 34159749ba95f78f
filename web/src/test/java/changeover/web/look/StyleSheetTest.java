package changeover.web.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.documents.band.YearTable;
import changeover.web.session.PromiseStrip;
import changeover.web.session.QrSquare;
import changeover.web.session.ReadingScale;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import changeover.web.session.WeeksChart;
import changeover.web.session.YearBand;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shared parts of every page print, in both languages, within the content policy and without a stray word. */
class StyleSheetTest {

    private static final Path OUT = Path.of("target/look");
    private static final List<String> SAMPLES = List.of("today", "home", "parts", "field", "yours");
    private static final Set<String> PAGES = new HashSet<>();

    private static Press press;

    @BeforeAll
    static void print() throws IOException {
        press = new Press();
        Files.createDirectories(OUT);
        for (String sample : SAMPLES) {
            for (String language : List.of("en", "fr-CA")) {
                for (String theme : List.of("day", "night")) {
                    String page = press.print(sample, language, data(language, theme));
                    Files.writeString(OUT.resolve(sample + "-" + language + "-" + theme + ".html"), page);
                    PAGES.add(page);
                }
            }
        }
    }

    private static Map<String, Object> data(String language, String theme) {
        Locale locale = Locale.forLanguageTag(language);
        boolean french = language.startsWith("fr");
        var year = Scene.year(french);
        Said said = new Said(
                Map.of("name", List.of("Two Turns"), "discount", List.of("110 %\"><b>")),
                Map.of("discount", french ? "Écrire de 0 à 100." : "Write 0 to 100."),
                List.of());
        String weeks = WeeksChart.svg(
                Scene.weeks(), Scene.TODAY, "Hours of visits by week", "Two weeks are over, by 9 and 7 hours.", locale);
        Map<String, Object> data = new HashMap<>();
        data.put("frame", Scene.frame(language, theme, Tab.TODAY));
        data.put("said", said);
        data.put("band", YearBand.svg(year, locale));
        data.put("table", YearTable.of(year, locale));
        data.put("title", french ? "L’année" : "The year");
        data.put("weeks", weeks);
        data.put("scale", scale("coil", "16", "22", "18", locale));
        data.put("scaleoff", scale("amps-scale", "18.8", "22.9", "12.1", locale));
        BigDecimal most = new BigDecimal("60");
        data.put("scaleone", ReadingScale.svg("drain", "Pan drain, s", null, most, new BigDecimal("21"), locale));
        data.put("qr", QrSquare.svg("https://example.com/marlow/homes/14-alder", "The house card"));
        data.put("months", PromiseStrip.months(year, locale));
        data.put(
                "strips",
                year.rows().stream()
                        .map(row -> PromiseStrip.svg(year, row, row.name()))
                        .toList());
        return data;
    }

    private static String scale(String id, String low, String high, String reading, Locale locale) {
        return ReadingScale.svg(
                id, "Reading", new BigDecimal(low), new BigDecimal(high), new BigDecimal(reading), locale);
    }

    @Test
    void noPageCarriesAStyleOrAScriptOfItsOwn() {
        for (String page : PAGES) {
            assertFalse(page.contains("style="), "a style attribute breaks the content policy");
            assertFalse(page.contains("<style"), "a style element breaks the content policy");
            assertFalse(page.contains("onclick"), "a handler breaks the content policy");
        }
    }

    @Test
    void idsAreUniqueAndEveryReferenceLeadsSomewhere() {
        Pattern references = Pattern.compile("(?:for|aria-describedby|aria-labelledby)=\"([^\"]+)\"|url\\(#([^)]+)\\)");
        for (String page : PAGES) {
            Set<String> ids = new HashSet<>();
            Matcher id = Pattern.compile("\\sid=\"([^\"]+)\"").matcher(page);
            while (id.find()) {
                assertTrue(ids.add(id.group(1)), "twice on one page: " + id.group(1));
            }
            Matcher reference = references.matcher(page);
            while (reference.find()) {
                String names = reference.group(1) == null ? reference.group(2) : reference.group(1);
                for (String name : names.split(" ")) {
                    assertTrue(ids.contains(name), "leads nowhere: " + name);
                }
            }
        }
    }

    @Test
    void whatSomebodyTypedIsEscapedAndItsSentenceIsTied() {
        String page = press.print("parts", "en", data("en", "day"));
        assertTrue(page.contains("value=\"110 %&quot;&gt;&lt;b&gt;\""), "typed text is escaped");
        assertTrue(page.contains("aria-invalid=\"true\" aria-describedby=\"discount-wrong\""));
        assertTrue(page.contains("<p class=\"wrong\" id=\"discount-wrong\">Write 0 to 100.</p>"));
    }

    @Test
    void everyWordOfTheLayoutsIsSaidInFrench() {
        assertEquals(List.of(), press.wordsWithoutFrench());
        assertTrue(press.print("today", "fr-CA", data("fr-CA", "day")).contains("Fermer la session"));
    }

    @Test
    void theYearIsSaidInOneSentence() {
        assertEquals(
                "14 promises: six kept, one late, six with a day, one without a day; next visit 15\u00a0October.",
                YearTable.of(Scene.year(false), Locale.ENGLISH).summary());
    }
}
