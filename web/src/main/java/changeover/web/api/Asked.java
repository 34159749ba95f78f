package changeover.web.api;

import changeover.contracts.money.Money;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.web.session.Typed;
import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A JSON document that somebody sent. A question answers a value, or a stand-in where there was none that it understands;
 * {@link #understood} stops with the sentences of all, those that nobody asked for too.
 */
public final class Asked {
    private final JsonNode document;
    private final String path;
    private final List<Refusal> refusals;
    private final Set<String> known = new TreeSet<>();

    private Asked(JsonNode document, String path, List<Refusal> refusals) {
        this.document = document;
        this.path = path;
        this.refusals = refusals;
    }

    /** @throws Refused when the text is no JSON object */
    public static Asked of(String text, ObjectMapper json) {
        try {
            JsonNode document = json.readTree(text.isBlank() ? "{}" : text);
            if (document.isObject()) {
                return new Asked(document, "", new ArrayList<>());
            }
        } catch (JacksonException notJson) {
            // said below, as for a list or a word
        }
        throw Refusal.of("session.not-json").thrown();
    }

    public String text(String member, int most) {
        int before = refusals.size();
        String text = line(member, most);
        if (text == null && refusals.size() == before) {
            refuse("typed.missing", member);
        }
        return text == null ? "" : text;
    }

    public @Nullable String line(String member, int most) {
        JsonNode value = value(member);
        if (value == null) {
            return null;
        }
        if (!value.isTextual()) {
            refuse("typed.text", member);
            return null;
        }
        String text = value.textValue().strip();
        Optional<Refusal> unfit = Checks.unfit(text);
        if (unfit.isPresent()) {
            refusals.add(unfit.get().at(path + member));
            return null;
        }
        if (text.length() > most) {
            refusals.add(Refusal.of("typed.too-long", Map.of("most", most)).at(path + member));
            return null;
        }
        return Checks.isUnseen(text) ? null : text;
    }

    public boolean yes(String member) {
        JsonNode value = value(member);
        if (value != null && !value.isBoolean()) {
            refuse("typed.yes-or-no", member);
        }
        return value != null && value.booleanValue();
    }

    public String oneOf(String member, Set<String> words) {
        String word = text(member, 100);
        if (!word.isEmpty() && !words.contains(word)) {
            refusals.add(Refusal.of(
                            "typed.one-of",
                            Map.of(
                                    "words",
                                    String.join(", ", words.stream().sorted().toList())))
                    .at(path + member));
            return words.iterator().next();
        }
        return word;
    }

    public LocalDate day(String member) {
        return must(member, "typed.day", LocalDate.EPOCH, Typed::readDay);
    }

    public @Nullable LocalDate dayOrNone(String member) {
        return value(member) == null ? null : day(member);
    }

    public LocalTime time(String member) {
        return must(member, "typed.time", LocalTime.MIDNIGHT, LocalTime::parse);
    }

    public UUID id(String member) {
        return must(member, "typed.id", new UUID(0, 0), UUID::fromString);
    }

    public @Nullable UUID idOrNone(String member) {
        return value(member) == null ? null : id(member);
    }

    public int whole(String member, int least, int most) {
        JsonNode value = value(member);
        if (value == null) {
            refuse("typed.missing", member);
            return least;
        }
        if (!value.isIntegralNumber()
                || !value.canConvertToInt()
                || value.intValue() < least
                || value.intValue() > most) {
            refusals.add(Refusal.of("typed.between", Map.of("least", least, "most", most))
                    .at(path + member));
            return least;
        }
        return value.intValue();
    }

    public int wholeOr(String member, int least, int most, int otherwise) {
        return value(member) == null ? otherwise : whole(member, least, most);
    }

    /** As a text or as a number. */
    public BigDecimal decimal(String member, BigDecimal least, BigDecimal most) {
        JsonNode value = value(member);
        if (value == null) {
            refuse("typed.missing", member);
            return least;
        }
        BigDecimal number = WrittenDecimal.of(value);
        if (number != null && number.compareTo(least) >= 0 && number.compareTo(most) <= 0) {
            return number;
        }
        Refusal why = number == null
                ? Refusal.of("typed.number")
                : Refusal.of("typed.between", Map.of("least", least, "most", most));
        refusals.add(why.at(path + member));
        return least;
    }

    /** An amount as a decimal text ("249.00"), not negative, to the cent. */
    public Money money(String member, Currency currency) {
        BigDecimal amount = decimal(member, BigDecimal.ZERO, Money.MOST);
        if (amount.stripTrailingZeros().scale() > currency.getDefaultFractionDigits()) {
            refuse("typed.cents", member);
            amount = BigDecimal.ZERO;
        }
        return Money.of(amount.setScale(currency.getDefaultFractionDigits()), currency);
    }

    /** The objects of a list; none when the member is missing. */
    public List<Asked> each(String member) {
        JsonNode value = value(member);
        if (value == null) {
            return List.of();
        }
        if (!value.isArray() || value.size() > 10_000) {
            refuse("typed.list", member);
            return List.of();
        }
        var each = new ArrayList<Asked>();
        for (int i = 0; i < value.size(); i++) {
            if (value.get(i).isObject()) {
                each.add(new Asked(value.get(i), path + member + "[" + i + "].", refusals));
            } else {
                refuse("typed.list", member);
            }
        }
        return each;
    }

    /** A member as it stands, for whoever reads it further. */
    public @Nullable JsonNode value(String member) {
        known.add(member);
        JsonNode value = document.get(member);
        return value == null || value.isNull() ? null : value;
    }

    /** Where this document stands in the whole, for a rule's own refusals. */
    public String path() {
        return path;
    }

    public void refuse(Refusal refusal) {
        refusals.add(refusal);
    }

    /** No member may be left that nobody asked for. */
    public Asked nothingElse() {
        document.fieldNames().forEachRemaining(name -> {
            if (!known.contains(name)) {
                String said = name.substring(0, Math.min(60, name.length()));
                refusals.add(
                        Refusal.of("typed.unknown-member", Map.of("known", String.join(", ", known), "member", said))
                                .at(path + said));
            }
        });
        return this;
    }

    public void understood() {
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    private void refuse(String code, String member) {
        refusals.add(Refusal.of(code).at(path + member));
    }

    private <T> T must(String member, String code, T standIn, Function<String, T> reading) {
        String text = text(member, 60);
        if (text.isEmpty()) {
            return standIn;
        }
        try {
            return reading.apply(text);
        } catch (IllegalArgumentException | DateTimeException notUnderstood) {
            refuse(Typed.why(notUnderstood, code).at(path + member));
            return standIn;
        }
    }
}
