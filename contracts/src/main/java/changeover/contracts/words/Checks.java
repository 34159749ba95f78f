package changeover.contracts.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is wrong with a form is said at once, each sentence beside its field. Texts come back without outer
 * blanks; what cannot be printed (NUL and its kind) is refused, and so is what turns the direction of writing.
 */
public final class Checks {

    /** The longest text of one line, in characters. */
    public static final int LINE = 200;

    /** The longest text of several lines, in characters. */
    public static final int NOTE = 4_000;

    private static final Pattern MAIL =
            Pattern.compile("[^\\s@<>,;:\"()\\[\\]]+@[^\\s@<>,;:\"()\\[\\]]+\\.[^\\s@.<>,;:\"()\\[\\]]+");
    private static final Pattern PHONE = Pattern.compile("[0-9+(). /\\-–xext#,]*[0-9][0-9+(). /\\-–xext#,]*");

    private final List<Refusal> refusals = new ArrayList<>();

    /** A text of one line that must be there. */
    public String line(String field, @Nullable String said) {
        String text = optionalLine(field, said);
        if (text == null && none(field)) {
            refuse(field, Refusal.of("text.missing"));
        }
        return text == null ? "" : text;
    }

    /** A text of one line that may be missing; blank is missing. */
    public @Nullable String optionalLine(String field, @Nullable String said) {
        String text = optional(field, said, LINE);
        if (text != null && text.codePoints().anyMatch(point -> point == '\n' || point == '\r')) {
            refuse(field, Refusal.of("text.one-line"));
        }
        return text;
    }

    /** A text of several lines that may be missing. */
    public @Nullable String note(String field, @Nullable String said) {
        return optional(field, said, NOTE);
    }

    /** @param max the most characters */
    public @Nullable String optional(String field, @Nullable String said, int max) {
        if (said == null || isUnseen(said)) {
            return null;
        }
        String text = said.strip();
        if (text.length() > max) {
            refuse(field, Refusal.of("text.too-long", Map.of("max", max)));
        } else {
            unfit(text).ifPresent(refusal -> refuse(field, refusal));
        }
        return text;
    }

    public @Nullable String mail(String field, @Nullable String said) {
        String text = optionalLine(field, said);
        if (text != null && !MAIL.matcher(text).matches()) {
            refuse(field, Refusal.of("text.not-mail"));
        }
        return text;
    }

    public @Nullable String phone(String field, @Nullable String said) {
        String text = optionalLine(field, said);
        if (text != null && !PHONE.matcher(text).matches()) {
            refuse(field, Refusal.of("text.not-phone"));
        }
        return text;
    }

    /** One of the codes, as it stands. */
    public String oneOf(String field, @Nullable String said, Collection<String> codes) {
        if (said == null || !codes.contains(said)) {
            refuse(field, Refusal.of("text.not-one-of", Map.of("codes", String.join(", ", codes))));
            return codes.iterator().next();
        }
        return said;
    }

    /** Says what is wrong unless something was already said about that field. */
    public void refuse(String field, Refusal refusal) {
        if (none(field)) {
            refusals.add(refusal.at(field));
        }
    }

    public void refuseIf(boolean wrong, String field, String code) {
        if (wrong) {
            refuse(field, Refusal.of(code));
        }
    }

    public List<Refusal> refusals() {
        return List.copyOf(refusals);
    }

    /** @throws Refused with every sentence, when there is one */
    public void orRefuse() {
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    /** Whether nothing of a text would be seen: blanks, and characters that only shape others or the line. */
    public static boolean isUnseen(String text) {
        return text.codePoints()
                .allMatch(point -> Character.isWhitespace(point)
                        || Character.isSpaceChar(point)
                        || Character.getType(point) == Character.FORMAT);
    }

    /** What no typed text may hold: a character that cannot be printed, or one that turns the reading of what stands around it. */
    public static Optional<Refusal> unfit(String text) {
        if (text.codePoints().anyMatch(Checks::unprintable)) {
            return Optional.of(Refusal.of("text.unprintable"));
        }
        return text.codePoints().anyMatch(Checks::turns) ? Optional.of(Refusal.of("text.turns")) : Optional.empty();
    }

    /**
     * Marks, embeddings, overrides and isolates of the direction of writing: unseen, they make two references look alike, or one
     * read as another. Source: Unicode Standard Annex 9, explicit and implicit directional formatting characters.
     */
    private static boolean turns(int point) {
        return point >= 0x202A && point <= 0x202E
                || point >= 0x2066 && point <= 0x2069
                || point == 0x200E
                || point == 0x200F
                || point == 0x061C;
    }

    /** Controls, half a surrogate pair, and what Unicode says is no character; tabs and line ends are printable. */
    private static boolean unprintable(int point) {
        return point < ' ' && point != '\n' && point != '\r' && point != '\t'
                || point == 0x7F
                || point >= 0xD800 && point <= 0xDFFF
                || (point & 0xFFFE) == 0xFFFE;
    }

    private boolean none(String field) {
        return refusals.stream().noneMatch(refusal -> field.equals(refusal.field()));
    }
}
