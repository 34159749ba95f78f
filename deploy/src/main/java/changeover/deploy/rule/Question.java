package changeover.deploy.rule;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.money.Money;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** What was asked: a JSON object, whose missing or wrong parts are named in a sentence. */
record Question(JsonNode json, String where) {

    private Optional<JsonNode> maybe(String name) {
        return Optional.ofNullable(json.get(name)).filter(node -> !node.isNull());
    }

    private JsonNode needed(String name) {
        return maybe(name).orElseThrow(() -> new IllegalArgumentException(name + " is missing" + where + "."));
    }

    boolean has(String name) {
        return maybe(name).isPresent();
    }

    boolean isObject(String name) {
        return maybe(name).filter(JsonNode::isObject).isPresent();
    }

    String text(String name) {
        return needed(name).asText();
    }

    String text(String name, String otherwise) {
        return maybe(name).map(JsonNode::asText).orElse(otherwise);
    }

    boolean yes(String name, boolean otherwise) {
        return maybe(name).map(JsonNode::asBoolean).orElse(otherwise);
    }

    int number(String name) {
        return read(name, "a whole number", JsonNode::asText, Integer::valueOf);
    }

    int number(String name, int otherwise) {
        return has(name) ? number(name) : otherwise;
    }

    BigDecimal decimal(String name) {
        return read(name, "a number", JsonNode::asText, BigDecimal::new);
    }

    LocalDate day(String name) {
        return read(name, "a day like 2027-03-31", JsonNode::asText, LocalDate::parse);
    }

    Optional<LocalDate> maybeDay(String name) {
        return has(name) ? Optional.of(day(name)) : Optional.empty();
    }

    /** {@code {"from":"2027-04-01","months":12}} or {@code {"from":…,"until":…}} (until out). */
    Term term(String name) {
        Question term = part(name);
        return term.has("until")
                ? new Term(term.day("from"), term.day("until"))
                : Term.ofMonths(term.day("from"), term.number("months", 12));
    }

    Money money(String name, Currency currency) {
        return read(
                name,
                "an amount with at most " + currency.getDefaultFractionDigits() + " decimals",
                JsonNode::asText,
                said -> Money.of(new BigDecimal(said), currency));
    }

    Currency currency() {
        String code = text("currency", "CAD");
        return Currency.getAvailableCurrencies().stream()
                .filter(known -> known.getCurrencyCode().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no currency " + code + "."));
    }

    Task task(String name) {
        return taskOf(text(name));
    }

    static Task taskOf(String code) {
        return Catalogue.shipped()
                .findTask(code)
                .orElseThrow(() -> new IllegalArgumentException("The catalogue has no task " + code + "."));
    }

    Question part(String name) {
        return new Question(needed(name), " in " + name);
    }

    /** The parts of a list; none when it is missing. */
    List<Question> parts(String name) {
        return maybe(name).stream()
                .flatMap(list -> StreamSupport.stream(list.spliterator(), false))
                .map(node -> new Question(objectIn(node, name), " in " + name))
                .toList();
    }

    /** The parts of a list that must be there and name one part at least. */
    List<Question> oneOrMore(String name) {
        needed(name);
        List<Question> parts = parts(name);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException(name + " is empty" + where + ".");
        }
        return parts;
    }

    /** The words of a list; none when it is missing. */
    List<String> texts(String name) {
        return maybe(name).stream()
                .flatMap(list -> StreamSupport.stream(list.spliterator(), false))
                .map(JsonNode::asText)
                .toList();
    }

    /** The days of a list; none when it is missing. */
    List<LocalDate> days(String name) {
        return texts(name).stream()
                .map(text -> new Question(Answers.object().put(name, text), where).day(name))
                .toList();
    }

    private static JsonNode objectIn(JsonNode node, String name) {
        if (!node.isObject()) {
            throw new IllegalArgumentException(name + " must be a list of objects.");
        }
        return node;
    }

    Map<String, String> words(String name) {
        Map<String, String> words = new HashMap<>();
        maybe(name)
                .ifPresent(node -> node.properties()
                        .forEach(entry ->
                                words.put(entry.getKey(), entry.getValue().asText())));
        return words;
    }

    /** The names and the objects under them. */
    Stream<Map.Entry<String, Question>> named(String name) {
        return maybe(name).stream()
                .flatMap(node -> node.properties().stream())
                .map(entry -> Map.entry(entry.getKey(), new Question(entry.getValue(), " in " + entry.getKey())));
    }

    private <T> T read(String name, String what, Function<JsonNode, String> text, Function<String, T> reading) {
        String said = text.apply(needed(name));
        try {
            return reading.apply(said);
        } catch (DateTimeException | NumberFormatException | ArithmeticException e) {
            throw new IllegalArgumentException(name + " must be " + what + where + ", not " + said + ".", e);
        }
    }
}
