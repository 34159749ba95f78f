package changeover.web.session;

import changeover.contracts.money.Money;
import changeover.contracts.words.Checks;
import changeover.contracts.words.OurAge;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.ws.rs.core.MultivaluedMap;
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
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a person typed into a form. Every question answers a value, or a stand-in when the field was not understood; the
 * sentence for that field is then kept, and {@link #understood} stops with all of them at once.
 */
public final class Typed {

    /** The longest text that any field takes, in characters. */
    public static final int LONGEST = 10_000;

    private static final Pattern SIGNS = Pattern.compile("^[\\s\u00a0\u202f$]+|[\\s\u00a0\u202f$%]+$");
    private static final Pattern SPACE_IN_GROUPS = Pattern.compile("(?<=\\d)[ \u00a0\u202f](?=\\d{3}(?!\\d))");
    private static final Pattern PLAIN = Pattern.compile("-?\\d{1,15}([.,]\\d{1,6})?");
    private static final Pattern GROUPED = Pattern.compile("-?\\d{1,3}(,\\d{3})+\\.\\d{1,6}|-?\\d{1,3}(,\\d{3}){2,5}");
    private static final Pattern TWOFOLD = Pattern.compile("-?[1-9]\\d{0,2},\\d{3}");

    private final MultivaluedMap<String, String> fields;
    private final List<Refusal> refusals = new ArrayList<>();

    public Typed(MultivaluedMap<String, String> fields) {
        this.fields = fields;
    }

    /** A text that must be there, at most so many characters. */
    public String text(String field, int most) {
        int before = refusals.size();
        String text = line(field, most);
        if (text == null && refusals.size() == before) {
            refuse("typed.missing", field);
        }
        return text == null ? "" : text;
    }

    /** A text that may be left out; blanks at both ends do not count. */
    public @Nullable String line(String field, int most) {
        String text = raw(field);
        Optional<Refusal> unfit = Checks.unfit(text);
        if (unfit.isPresent()) {
            refusals.add(unfit.get().at(field));
            return null;
        }
        if (text.length() > most) {
            refusals.add(Refusal.of("typed.too-long", Map.of("most", most)).at(field));
            return null;
        }
        return Checks.isUnseen(text) ? null : text.replace("\r\n", "\n");
    }

    public boolean ticked(String field) {
        return !raw(field).isEmpty();
    }

    /** Every value of a field that may be given many times. */
    public List<String> each(String field) {
        List<String> all = fields.get(field);
        return all == null
                ? List.of()
                : all.stream().filter(one -> !one.isBlank()).toList();
    }

    /** One of a few words; anything else is refused. */
    public String oneOf(String field, Set<String> words) {
        String word = raw(field);
        if (!words.contains(word)) {
            refuse("typed.choose", field);
            return words.iterator().next();
        }
        return word;
    }

    public LocalDate day(String field) {
        return must(field, "typed.day", LocalDate.EPOCH, Typed::readDay);
    }

    public @Nullable LocalDate dayOrNone(String field) {
        return raw(field).isEmpty() ? null : day(field);
    }

    /** The day on which a machine was installed, which may be older than the shop; it may be left out. */
    public @Nullable LocalDate installedOrNone(String field) {
        return raw(field).isEmpty() ? null : must(field, "typed.day", LocalDate.EPOCH, OurAge::installed);
    }

    public LocalTime time(String field) {
        return must(field, "typed.time", LocalTime.MIDNIGHT, LocalTime::parse);
    }

    public UUID id(String field) {
        return must(field, "typed.choose", new UUID(0, 0), UUID::fromString);
    }

    public @Nullable UUID idOrNone(String field) {
        return raw(field).isEmpty() ? null : id(field);
    }

    /** A whole number from least to most. */
    public int whole(String field, int least, int most) {
        BigDecimal number = number(field, BigDecimal.valueOf(least), BigDecimal.valueOf(most));
        if (number.stripTrailingZeros().scale() > 0) {
            refusals.add(between(least, most).at(field));
            return least;
        }
        return number.intValueExact();
    }

    /** A number with a point or a comma, from least to most. */
    public BigDecimal number(String field, BigDecimal least, BigDecimal most) {
        BigDecimal number = must(field, "typed.number", least, Typed::decimal);
        if (number.compareTo(least) < 0 || number.compareTo(most) > 0) {
            refusals.add(between(least, most).at(field));
            return least;
        }
        return number;
    }

    /** A number that may be left out. */
    public @Nullable BigDecimal numberOrNone(String field, long least, long most) {
        return raw(field).isEmpty() ? null : number(field, BigDecimal.valueOf(least), BigDecimal.valueOf(most));
    }

    /** An amount of money, not negative, to the cent and below a hundred million; 1,000 may be a thousand or one, and is asked for again. */
    public Money money(String field, Currency currency) {
        if (TWOFOLD.matcher(bare(raw(field))).matches()) {
            refusals.add(
                    Refusal.of("typed.twofold", Map.of("written", raw(field))).at(field));
            return Money.zero(currency);
        }
        BigDecimal amount = number(field, BigDecimal.ZERO, Money.MOST);
        if (amount.stripTrailingZeros().scale() > currency.getDefaultFractionDigits()) {
            refuse("typed.cents", field);
            amount = BigDecimal.ZERO;
        }
        return Money.of(amount.setScale(currency.getDefaultFractionDigits()), currency);
    }

    /**
     * A day as {@code 2026-10-15}; years that no shop lives in are slips of the hand.
     *
     * @throws DateTimeException when it is none
     */
    public static LocalDate readDay(String text) {
        return OurAge.day(text);
    }

    /** Adds what a rule says about a field. */
    public void refuse(Refusal refusal) {
        refusals.add(refusal);
    }

    /** What was said about the fields so far. */
    public List<Refusal> refusals() {
        return List.copyOf(refusals);
    }

    /** Stops with every sentence that was kept. */
    public void understood() {
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    /** The fields as typed, to be shown again. */
    public Map<String, List<String>> asTyped() {
        return Map.copyOf(fields);
    }

    private static Refusal between(Object least, Object most) {
        return Refusal.of("typed.between", Map.of("least", least, "most", most));
    }

    private void refuse(String code, String field) {
        refusals.add(Refusal.of(code).at(field));
    }

    private String raw(String field) {
        String text = fields.getFirst(field);
        return text == null ? "" : text.strip();
    }

    private <T> T must(String field, String code, T standIn, Function<String, T> reading) {
        String text = raw(field);
        if (text.isEmpty()) {
            refuse("typed.missing", field);
            return standIn;
        }
        try {
            return reading.apply(text);
        } catch (IllegalArgumentException | DateTimeException notUnderstood) {
            refuse(why(notUnderstood, code).at(field));
            return standIn;
        }
    }

    /** @param code of the sentence for what is not understood at all */
    public static Refusal why(RuntimeException notUnderstood, String code) {
        return notUnderstood instanceof OurAge.AnotherAge age
                ? Refusal.of(
                        "typed.age", Map.of("first", String.valueOf(age.first()), "last", String.valueOf(OurAge.LAST)))
                : Refusal.of(code);
    }

    private static BigDecimal decimal(String text) {
        String bare = bare(text);
        if (bare.length() > 24) {
            throw new NumberFormatException("not a number");
        }
        if (GROUPED.matcher(bare).matches()) {
            return new BigDecimal(bare.replace(",", ""));
        }
        if (PLAIN.matcher(bare).matches()) {
            return new BigDecimal(bare.replace(',', '.'));
        }
        throw new NumberFormatException("not a number");
    }

    /** Without its sign of money or per cent at either end, and without the spaces that group its digits. */
    private static String bare(String text) {
        return SPACE_IN_GROUPS.matcher(SIGNS.matcher(text).replaceAll("")).replaceAll("");
    }
}
