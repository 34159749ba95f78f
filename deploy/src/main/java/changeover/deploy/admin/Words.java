package changeover.deploy.admin;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A command line, read once: {@code --name value}, {@code --name=value}, flags, and the plain words between them. */
public final class Words {
    private final String command;
    private final List<String> plain = new ArrayList<>();
    private final Map<String, String> options = new LinkedHashMap<>();

    /** @param flags the options that take no value */
    public Words(String command, List<String> words, Set<String> flags) {
        this.command = command;
        Deque<String> rest = new ArrayDeque<>(words);
        while (!rest.isEmpty()) {
            String word = rest.removeFirst();
            if (!word.startsWith("-") || word.length() == 1) {
                plain.add(word);
            } else if (flags.contains(word)) {
                options.put(word, "");
            } else if (word.startsWith("--") && word.indexOf('=') > 0) {
                options.put(word.substring(0, word.indexOf('=')), word.substring(word.indexOf('=') + 1));
            } else if (rest.isEmpty()) {
                throw new IllegalArgumentException("A value is missing after " + word + ".");
            } else {
                options.put(word, rest.removeFirst());
            }
        }
    }

    public List<String> plain() {
        return plain;
    }

    public boolean has(String name) {
        return options.containsKey(name);
    }

    public Optional<String> option(String name) {
        return Optional.ofNullable(options.get(name)).filter(value -> !value.isBlank());
    }

    /**
     * The value of an option that must be there.
     *
     * @throws IllegalArgumentException with a sentence when it is missing
     */
    public String needed(String name, String what) {
        return option(name)
                .orElseThrow(() -> new IllegalArgumentException("%s needs %s (%s).".formatted(command, name, what)));
    }

    /**
     * Lets only these options pass.
     *
     * @throws IllegalArgumentException with a sentence when another was given
     */
    public void allow(Set<String> names) {
        for (String name : options.keySet()) {
            if (!names.contains(name)) {
                throw new IllegalArgumentException("%s does not know %s.".formatted(command, name));
            }
        }
    }
}
