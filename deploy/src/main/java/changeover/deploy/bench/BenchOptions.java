package changeover.deploy.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the measures on a database may be asked with; a word that none of them knows measures nothing. */
final class BenchOptions {

    private static final Option SIZE = new Option("--size", 1, 1_000_000);

    private static final Map<String, List<Option>> KNOWN = Map.of(
            "season",
            List.of(SIZE),
            "season-again",
            List.of(SIZE),
            "billing",
            List.of(new Option("--size", 100, 100_000)),
            "page",
            List.of(),
            "tenants",
            List.of(new Option("--size", 10, 100_000), new Option("--minutes", 1, 600)));

    /** A whole number within bounds. */
    private record Option(String word, int least, int most) {

        boolean takes(String value) {
            return value.matches("[0-9]{1,7}") && Integer.parseInt(value) >= least && Integer.parseInt(value) <= most;
        }

        @Override
        public String toString() {
            return "%s, a whole number from %d to %d".formatted(word, least, most);
        }
    }

    private BenchOptions() {}

    /** Why a measure cannot be asked like that, in a sentence; empty when it can. */
    static Optional<String> wrong(String measure, List<String> words) {
        List<Option> known = KNOWN.getOrDefault(measure, List.of());
        Set<String> said = new HashSet<>();
        for (int at = 0; at < words.size(); at += 2) {
            String word = words.get(at);
            String value = at + 1 < words.size() ? words.get(at + 1) : "";
            boolean understood =
                    said.add(word) && known.stream().anyMatch(one -> one.word.equals(word) && one.takes(value));
            if (!understood) {
                String all =
                        String.join("; ", known.stream().map(Option::toString).toList());
                return Optional.of("deploy/bench %s takes %s.".formatted(measure, known.isEmpty() ? "no option" : all));
            }
        }
        return Optional.empty();
    }

    /** Of what was said to all measures, what is this one's. */
    static List<String> own(String measure, List<String> words) {
        List<String> own = new ArrayList<>();
        for (int at = 0; at + 1 < words.size(); at += 2) {
            if (wrong(measure, words.subList(at, at + 2)).isEmpty()) {
                own.addAll(words.subList(at, at + 2));
            }
        }
        return own;
    }
}
