package changeover.contracts.words;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Why something is not done, as a value: the code of a sentence held in both languages, the field it is about (null
 * when it is about the whole form) and what fills the sentence's {@code {name}} places. The facts are in the order of
 * their names, so that the same refusal reads the same in every process.
 */
public record Refusal(String code, @Nullable String field, Map<String, ?> facts) {

    public Refusal {
        facts = Collections.unmodifiableMap(new TreeMap<String, Object>(facts));
    }

    public static Refusal of(String code) {
        return new Refusal(code, null, Map.of());
    }

    public static Refusal of(String code, Map<String, ?> facts) {
        return new Refusal(code, null, facts);
    }

    public Refusal at(String field) {
        return new Refusal(code, field, facts);
    }

    public Refused thrown() {
        return new Refused(this);
    }
}
