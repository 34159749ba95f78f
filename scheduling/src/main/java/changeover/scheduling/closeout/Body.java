package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the fields of an operation's body and keeps a refusal for each that does not read, so that all are told at once. */
final class Body {

    static final int LONGEST_WORDS = 4000;
    static final int LONGEST_LINE = 200;

    private static final int MOST_NAMES = 60;

    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(?:[.,]\\d{1,6})?");
    private static final Pattern UNREADABLE = Pattern.compile("[\\p{Cc}&&[^\\n\\r\\t]]|[\\p{Cs}]");

    private final JsonNode body;
    private final List<Refusal> refusals = new ArrayList<>();

    Body(JsonNode body) {
        this.body = body;
        if (!body.isObject()) {
            refuse("operation.body-shape", "", Map.of());
        }
    }

    List<Refusal> refusals() {
        return refusals;
    }

    void refuse(String code, String field, Map<String, ?> facts) {
        refusals.add(Refusal.of("closeout." + code, facts).at(field));
    }

    /** Words that must be there. */
    String words(String field, int longest) {
        Optional<String> said = optionalWords(field, longest);
        if (said.isEmpty()) {
            missing(field);
        }
        return said.orElse("");
    }

    @Nullable
    String wordsOrNull(String field, int longest) {
        return optionalWords(field, longest).orElse(null);
    }

    private Optional<String> optionalWords(String field, int longest) {
        JsonNode node = body.path(field);
        if (node.isMissingNode() || node.isNull()) {
            return Optional.empty();
        }
        if (node.isContainerNode()) {
            refuse("operation.words", field, Map.of());
            return Optional.empty();
        }
        String said = node.asText().strip();
        if (UNREADABLE.matcher(said).find()) {
            refuse("operation.unreadable", field, Map.of());
            return Optional.empty();
        }
        if (said.length() > longest) {
            refuse("operation.too-long", field, Map.of("most", longest));
            return Optional.empty();
        }
        return said.isEmpty() ? Optional.empty() : Optional.of(said);
    }

    String oneOf(String field, Set<String> codes) {
        String said = words(field, LONGEST_LINE);
        if (!said.isEmpty() && !codes.contains(said)) {
            refuse(
                    "operation.choice",
                    field,
                    Map.of("choices", String.join(", ", codes.stream().sorted().toList())));
        }
        return said;
    }

    @Nullable
    String oneOfOrNull(String field, Set<String> codes) {
        return wordsOrNull(field, LONGEST_LINE) == null ? null : oneOf(field, codes);
    }

    UUID id(String field) {
        UUID id = idOrNull(field);
        if (id == null && wordsOrNull(field, LONGEST_LINE) == null) {
            missing(field);
        }
        return id == null ? new UUID(0, 0) : id;
    }

    @Nullable
    UUID idOrNull(String field) {
        String said = wordsOrNull(field, LONGEST_LINE);
        if (said == null) {
            return null;
        }
        Optional<UUID> id = Ids.read(said);
        if (id.isEmpty()) {
            refuse("operation.id", field, Map.of());
        }
        return id.orElse(null);
    }

    @Nullable
    Boolean yesOrNull(String field) {
        String said = oneOfOrNull(field, Set.of("yes", "no"));
        return said == null ? null : said.equals("yes");
    }

    int wholeOr(String field, int most, int otherwise) {
        return wordsOrNull(field, LONGEST_LINE) == null ? otherwise : whole(field, most);
    }

    /** A whole number from nought to the most. */
    int whole(String field, int most) {
        String said = words(field, LONGEST_LINE);
        if (said.matches("\\d{1,6}") && Integer.parseInt(said) <= most) {
            return Integer.parseInt(said);
        }
        if (!said.isEmpty()) {
            refuse("operation.whole", field, Map.of("most", most));
        }
        return 0;
    }

    BigDecimal number(String field) {
        BigDecimal number = numberOrNull(field);
        if (number == null && wordsOrNull(field, LONGEST_LINE) == null) {
            missing(field);
        }
        return number == null ? BigDecimal.ZERO : number;
    }

    @Nullable
    BigDecimal numberOrNull(String field) {
        String said = wordsOrNull(field, LONGEST_LINE);
        if (said == null) {
            return null;
        }
        Optional<BigDecimal> number = number(said, NUMBER);
        if (number.isEmpty()) {
            refuse("operation.number", field, Map.of());
        }
        return number.orElse(null);
    }

    /** A number as people type it, with a point or a comma; empty for anything else. */
    static Optional<BigDecimal> typed(String said) {
        return number(said.strip().replace('\u2212', '-'), NUMBER);
    }

    private static Optional<BigDecimal> number(String said, Pattern shape) {
        return shape.matcher(said).matches() ? Optional.of(new BigDecimal(said.replace(',', '.'))) : Optional.empty();
    }

    private void missing(String field) {
        if (refusals.stream().noneMatch(refusal -> field.equals(refusal.field()))) {
            refuse("operation.missing", field, Map.of());
        }
    }

    @Nullable
    LocalDate dayOrNull(String field) {
        String said = wordsOrNull(field, LONGEST_LINE);
        if (said == null) {
            return null;
        }
        try {
            LocalDate day = LocalDate.parse(said);
            if (day.getYear() >= 1900 && day.getYear() <= 2200) {
                return day;
            }
        } catch (DateTimeParseException notADay) {
            refuse("reading-day", field, Map.of());
            return null;
        }
        refuse("reading-day", field, Map.of());
        return null;
    }

    /** Values by their names; none when the field is left out. */
    Map<String, String> named(String field) {
        JsonNode node = body.path(field);
        if (node.isMissingNode() || node.isNull()) {
            return Map.of();
        }
        if (!node.isObject() || node.size() > MOST_NAMES) {
            refuse("operation.words", field, Map.of());
            return Map.of();
        }
        Body inside = new Body(node);
        Map<String, String> named = new LinkedHashMap<>();
        node.properties().forEach(one -> {
            String value = inside.wordsOrNull(one.getKey(), LONGEST_LINE);
            if (value != null) {
                named.put(one.getKey(), value);
            }
        });
        inside.refusals.forEach(refusal -> refusals.add(refusal.at(field + "." + refusal.field())));
        return named;
    }
}
