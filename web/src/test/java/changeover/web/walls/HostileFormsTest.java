package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.walls.ALivedInShop.Lived;
import changeover.web.walls.Caller.Answer;
import changeover.web.walls.Caller.Who;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Whatever is typed into any field of any form: nothing breaks, nothing comes back as it was written, a refusal is a
 * sentence in the person's language, and what else was typed is still there.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HostileFormsTest {

    private static final boolean DEEP = Boolean.getBoolean("changeover.deep");
    private static final int VALUES = Integer.getInteger("changeover.values", DEEP ? 50 : 1);

    /** A key's or an alarm's secret is never shown again, not even to whoever has just typed it. */
    private static final String SECRET = "secret";

    /** What ends something is tried last, so that everything is still open for the rest. */
    private static final Pattern ENDS =
            Pattern.compile("/(ending|closure|outcome|withdrawal|undoing|removal|revocation|issue)$");

    /** The rows of one table are read by the same code, a plan's tasks and parts too: one of them is tried. */
    private static final Pattern ROW = Pattern.compile("(?<=^(?:often|every|part|extra|within)-)[a-z].*|\\d+");

    private static final Pattern SENTENCE = Pattern.compile("(?s)<(p|h1|li|span|b)\\b[^>]*>[^<]*\\p{L}{3}[^<]*<");

    /** What an answer never tells. */
    private static final List<String> INSIDE = List.of(
            "\tat ",
            "Exception",
            "jakarta.",
            "org.hibernate",
            "PSQLException",
            "java.lang",
            "changeover.web",
            "select *",
            "SQLSTATE");

    @Inject
    ALivedInShop shops;

    /** Longer addresses are not read at all. */
    private static final int LONGEST_ADDRESS = 3000;

    /** A text that is far too long comes back once or twice, not many times. */
    private static final int LONGEST_ANSWER = 3_000_000;

    private final List<String> wrong = new ArrayList<>();
    private final Set<String> tried = new HashSet<>();
    private int posts;
    private int refusals;

    @Test
    void the_office_in_french() {
        Lived lived = shops.open("CA-QC", "fr");
        everyForm(
                Who.member("owner", lived.shop().owner()),
                lived,
                "fr-CA",
                List.of(
                        "today",
                        "shop",
                        "homes",
                        "money",
                        "season",
                        "agreements",
                        "plans",
                        "parts",
                        "buildings",
                        "homes/new",
                        "buildings/new",
                        "plans/new"),
                55);
    }

    @Test
    void the_field_in_english() {
        Lived lived = shops.open("CA-QC", "en");
        everyForm(Who.member("technician", lived.shop().technician()), lived, "en", List.of("field"), 5);
    }

    @Test
    void the_customers_page() {
        Lived lived = shops.open("CA-ON", "en");
        String door = "yours/" + lived.secret();
        everyForm(Who.customer("customer", lived.secret()), lived, "en", List.of("yours", door), 0);
    }

    private void everyForm(Who who, Lived lived, String language, List<String> starts, int atLeast) {
        long seed = Long.getLong("changeover.seed", DEEP ? System.nanoTime() : 20_261_125);
        var random = new Random(seed);
        Walk.Walked walked = Walk.from(
                who, lived.shop().slug(), starts.stream().map(lived.shop()::at).toList());
        walked.broken().entrySet().stream()
                .filter(one -> one.getValue() >= 500 || !one.getKey().endsWith("=a"))
                .forEach(one -> wrong.add(one.getKey() + " does not open: " + one.getValue()));
        List<Form> forms = walked.forms().stream()
                .filter(form -> !form.action().endsWith("/language"))
                .sorted(Comparator.comparing(form -> ENDS.matcher(form.action()).find()))
                .toList();
        for (Form form : forms) {
            for (Form.Field field : form.fields()) {
                if (!tried.add(Walk.shape(form.action()) + " "
                        + ROW.matcher(field.name()).replaceAll("row"))) {
                    continue;
                }
                for (String value : HostileWords.some(VALUES, random)) {
                    tryOne(who, form, field, value, language);
                }
            }
        }
        System.out.println("walls: " + who.words() + " pages=" + walked.pages() + " forms=" + forms.size() + " fields="
                + tried.size() + " posts=" + posts + " refusals=" + refusals + " seed=" + seed);
        assertEquals(List.of(), wrong.stream().distinct().toList());
        assertTrue(
                forms.size() >= atLeast,
                "forms: " + forms.stream().map(Form::shape).toList());
    }

    private void tryOne(Who who, Form form, Form.Field field, String value, String language) {
        if (form.method().equals("GET") && value.length() > LONGEST_ADDRESS) {
            return;
        }
        Map<String, List<String>> filled = Filled.of(form);
        Answer answer = form.method().equals("POST")
                ? Caller.ask(who, "POST", form.action(), form.with(filled, field.name(), value))
                : Caller.get(who, form.action() + "?" + field.name() + "=" + Caller.encoded(value));
        posts++;
        String at = who.words() + " " + Walk.shape(form.action()) + " " + field.name() + "=" + brief(value) + ": ";
        judge(at, answer, language);
        if (answer.status() == 303) {
            judge(at + "then ", Caller.get(who, answer.location().replaceFirst("^https?://[^/]*", "")), language);
        }
        if (answer.status() == 422) {
            refusals++;
            List<String> lost = lost(form, field, filled, answer);
            if (!lost.isEmpty() && isStillThere(who, form)) {
                wrong.add(at + "the text is lost of " + lost);
            }
        }
    }

    private void judge(String at, Answer answer, String language) {
        if (answer.status() >= 500 || answer.status() == 400) {
            wrong.add(at + answer.status());
            return;
        }
        if (answer.body().length() > LONGEST_ANSWER) {
            wrong.add(at + "is answered with " + answer.body().length() + " characters");
        }
        for (String raw : HostileWords.NEVER_RAW) {
            if (answer.body().contains(raw) && answer.isPage()) {
                wrong.add(at + "comes back raw");
            }
        }
        for (String inside : INSIDE) {
            if (answer.status() >= 300 && answer.body().contains(inside)) {
                wrong.add(at + answer.status() + " tells " + inside);
            }
        }
        boolean says = answer.isPage()
                && answer.body().contains("<html lang=\"" + language + "\"")
                && SENTENCE.matcher(answer.body()).find();
        if (answer.status() >= 400 && !says) {
            wrong.add(at + answer.status() + " without a sentence in " + language + ": " + brief(answer.body()));
        }
    }

    /** What was typed into the other fields, and does not stand on the page that comes back. */
    private static List<String> lost(Form form, Form.Field hostile, Map<String, List<String>> filled, Answer answer) {
        String page = Form.plain(answer.body());
        return form.fields().stream()
                .filter(field -> field.isWords()
                        && !field.name().equals(hostile.name())
                        && !field.name().equals(SECRET))
                .filter(field -> !page.contains(filled.get(field.name()).getFirst()))
                .map(Form.Field::name)
                .toList();
    }

    /** What is over has no form any more, and nothing to keep. */
    private static boolean isStillThere(Who who, Form form) {
        return Form.of(form.page(), Caller.get(who, form.page()).body()).stream()
                .anyMatch(still -> still.shape().equals(form.shape()));
    }

    private static String brief(String text) {
        String line = text.replaceAll("[\\s\\p{Cntrl}]+", " ");
        return line.length() > 70 ? line.substring(0, 60) + "… (" + text.length() + ")" : line;
    }
}
