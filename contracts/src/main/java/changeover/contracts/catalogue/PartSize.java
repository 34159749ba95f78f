package changeover.contracts.catalogue;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which one of its kind a part is, however it is written: a filter by its face and its thickness, and by its class where the part
 * and the machine both say one. Whose thickness nobody wrote fits none that has one.
 *
 * @param dims {@code 16x25x4}, the shorter side first; any other text as it was written
 * @param rating a filter's class (MERV); null where none is said
 */
public record PartSize(String dims, @Nullable Integer rating) {

    private static final String NUMBER =
            "(\\d{1,3}(?:[.,]\\d{1,3})?)\\s*(?:\"|″|”|in\\.?|po\\.?|pouces?|inch(?:es)?)?\\s*";
    private static final String BY = "(?:[x×*]|by|par)\\s*";
    private static final Pattern SIDES =
            Pattern.compile(NUMBER + BY + NUMBER + "(?:" + BY + NUMBER + ")?", Pattern.CASE_INSENSITIVE);
    private static final Pattern RATING = Pattern.compile("\\bmerv[\\s-]*(\\d{1,2})\\b", Pattern.CASE_INSENSITIVE);

    private static final String THICKNESS = "thickness";
    private static final String CLASS = "merv";

    public static PartSize of(String said) {
        return read(said, null, null);
    }

    /**
     * @param name of the part, which may say its class where its size does not
     */
    public static PartSize ofPart(String size, String name) {
        return read(size, null, rating(name).orElse(null));
    }

    /**
     * What fits a machine; empty where nobody wrote it down.
     *
     * @param fact the one that says which part, as {@link PartKind#fits()} names it
     * @param fits what fits the machine, as its card says
     */
    public static Optional<PartSize> ofMachine(@Nullable String fact, Map<String, String> fits) {
        String said = fact == null ? "" : fits.getOrDefault(fact, "").strip();
        if (said.isEmpty()) {
            return Optional.empty();
        }
        Matcher deep =
                Pattern.compile(NUMBER).matcher(fits.getOrDefault(THICKNESS, "").strip());
        return Optional.of(read(
                said,
                deep.lookingAt() ? deep.group(1) : null,
                rating("merv " + fits.getOrDefault(CLASS, "")).orElse(null)));
    }

    /** Its own words stand before what is said beside it. */
    private static PartSize read(String said, @Nullable String thickness, @Nullable Integer beside) {
        Integer rating = rating(said).orElse(beside);
        String rest =
                RATING.matcher(said).replaceAll("").replaceAll("[\\s,;]+$", "").strip();
        Matcher sides = SIDES.matcher(rest);
        if (!sides.matches()) {
            return new PartSize(rest.replaceAll("\\s+", " "), rating);
        }
        String deep = sides.group(3) == null ? thickness : sides.group(3);
        String face = Stream.of(sides.group(1), sides.group(2))
                .map(PartSize::number)
                .sorted(Comparator.comparing(BigDecimal::new))
                .collect(Collectors.joining("x"));
        return new PartSize(deep == null ? face : face + "x" + number(deep), rating);
    }

    private static String number(String said) {
        BigDecimal plain = new BigDecimal(said.replace(',', '.')).stripTrailingZeros();
        return plain.toPlainString();
    }

    private static Optional<Integer> rating(String said) {
        Matcher found = RATING.matcher(said);
        return found.find() ? Optional.of(Integer.valueOf(found.group(1))) : Optional.empty();
    }

    /** Whether a part of this size goes where that one is asked for. */
    public boolean fits(PartSize asked) {
        return key().equals(asked.key()) && (rating == null || asked.rating == null || rating.equals(asked.rating));
    }

    /** Of several that fit the one that says its class too. */
    public boolean saysClass() {
        return rating != null;
    }

    private String key() {
        return dims.toLowerCase(Locale.ROOT);
    }

    /** {@code 16x25x4 MERV 11}. */
    public String words() {
        return String.join(" ", rating == null ? List.of(dims) : List.of(dims, "MERV " + rating));
    }
}
