package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What holds on every page that anybody sees: one language, no code where words belong, and WCAG 2.2 AA by axe-core. */
final class PageRules {
    private static final boolean DEEP = Boolean.getBoolean("changeover.deep");

    /** A page that keeps the rules at both ends is read at this width under the full counts alone; it fits it every day. */
    private static final int BETWEEN = 768;

    private static final List<Integer> DESK = List.of(320, BETWEEN, 1280);
    private static final List<Integer> HAND = List.of(320, 390);

    /** Words that any English page of ours has somewhere, and no French one. */
    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(the|and|with|your|home|homes|today|visit is|keep|invoice|agreement|technician|payment|amount|due"
                    + "|sign out|season|shop|filter|street|customer)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

    private static final Pattern FRENCH = Pattern.compile(
            "\\b(le|la|les|des|une|votre|vos|avec|domicile|facture|contrat|visite|paiement|aujourd’hui)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

    /** A key of a message, a code of an enumeration, an empty value. */
    private static final Pattern RAW = Pattern.compile(
            "\\b(null|UNKNOWN|NOT_FOUND|[A-Z]{3,}_[A-Z]{3,}|Optional(\\.empty|\\[)|(msg|said|visit|agreement|plan|invoice|typed"
                    + "|closeout|deal|money|homes)[.:][a-z][a-z_-]+)\\b|(?<!\\.)\\.\\.(?!\\.)");

    private static final String WORDS = """
            const page = document.body.cloneNode(true);
            page.querySelectorAll('[lang]:not([lang^="' + arguments[0] + '"]), option, [translate=no], script, svg, .own')
              .forEach(other => other.remove());
            page.querySelectorAll('*').forEach(one => { one.before(' '); one.after(' '); });
            const said = [document.title, page.textContent];
            for (const name of ['aria-label', 'alt', 'title', 'placeholder']) {
              page.querySelectorAll('[' + name + ']').forEach(one => said.push(one.getAttribute(name)));
            }
            return said.join(' \\n');""";

    /** What somebody wrote and a sentence cites, in whatever language. */
    private static final Pattern CITED = Pattern.compile("“[^“”]*”|«[^«»]*»");

    private static final String POLICY = """
            const done = arguments[arguments.length - 1];
            fetch(location.href, {cache: 'no-store'})
              .then(a => done(a.headers.get('content-security-policy'))).catch(e => done(String(e)));""";

    private static final String TOO_WIDE = """
            const page = document.documentElement;
            if (page.scrollWidth <= page.clientWidth) return '';
            return [...document.querySelectorAll('body *')]
              .filter(one => one.getBoundingClientRect().right > page.clientWidth + 1)
              .slice(0, 3).map(one => one.outerHTML.slice(0, 160)).join(' | ') || 'something';""";

    /** Rows of one list are alike: the first of a long one stand for all. */
    private static final String AXE = """
            const done = arguments[arguments.length - 1];
            axe.run({exclude: [['tbody tr:nth-child(n+25)'], ['.rows > li:nth-child(n+25)']]}, {resultTypes: ['violations'],
              runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']})
              .then(r => done(r.violations.map(v => v.id + ': ' + v.help + ' at '
                + v.nodes.slice(0, 3).map(n => n.target.join(' ') + ' ' + n.html.slice(0, 160)).join(' | '))))
              .catch(e => done([String(e)]));""";

    private final String language;
    private final int width;
    private final Set<String> known = new HashSet<>();

    PageRules(String language, int width) {
        this.language = language;
        this.width = width;
    }

    void judge(Browser browser) {
        String address = browser.driver().getCurrentUrl();
        String spoken = Objects.requireNonNull(browser.find("html").getDomAttribute("lang"));
        assertTrue(spoken.startsWith(language), () -> address + " speaks " + spoken);
        String words = String.valueOf(browser.driver().executeScript(WORDS, language));
        none(language.equals("fr") ? ENGLISH : FRENCH, CITED.matcher(words).replaceAll(" "), address);
        none(RAW, words, address);
        fits(browser, address);
        if (known.add(kind(address) + browser.all("[aria-invalid]").size())) {
            accessible(browser, address);
        }
    }

    private static void none(Pattern foreign, String words, String address) {
        Matcher found = foreign.matcher(words);
        if (found.find()) {
            int from = Math.max(0, found.start() - 60);
            int until = Math.min(words.length(), found.end() + 60);
            throw new AssertionError(address + " says “" + found.group() + "”: …"
                    + words.substring(from, until).replaceAll("\\s+", " ") + "…");
        }
    }

    /** Pages of one kind differ in ids and questions only. */
    private static String kind(String address) {
        return address.replaceAll("[?#].*", "").replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "*");
    }

    private void accessible(Browser browser, String address) {
        browser.driver().executeScript(Axe.SOURCE);
        for (int each : width < 700 ? HAND : DESK) {
            browser.wide(each);
            if (each != BETWEEN || DEEP) {
                Object found = browser.driver().executeAsyncScript(AXE);
                assertEquals(List.of(), found, () -> address + " at " + each + " pixels");
            }
            assertEquals((long) each, browser.driver().executeScript("return window.innerWidth"), "the window obeys");
            fits(browser, address);
        }
        browser.wide(width);
        String policy = String.valueOf(browser.driver().executeAsyncScript(POLICY));
        assertTrue(
                policy.startsWith("default-src 'none'") && !policy.contains("unsafe-"), () -> address + ": " + policy);
    }

    /** A window that was made narrower lays its page out anew, on a busy machine a moment later. */
    private static void fits(Browser browser, String address) {
        Instant patience = Instant.now().plusSeconds(5);
        Object wide = browser.driver().executeScript(TOO_WIDE);
        while (!"".equals(wide) && Instant.now().isBefore(patience)) {
            wide = browser.driver().executeScript(TOO_WIDE);
        }
        assertEquals(
                "",
                wide,
                () -> address + " is too wide for " + browser.driver().executeScript("return window.innerWidth")
                        + " pixels");
    }

    /** The rules themselves, read once. */
    private static final class Axe {
        static final String SOURCE = read();

        private static String read() {
            try (var source = Axe.class.getResourceAsStream("/axe.min.js")) {
                return new String(Objects.requireNonNull(source).readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException cause) {
                throw new UncheckedIOException(cause);
            }
        }
    }
}
