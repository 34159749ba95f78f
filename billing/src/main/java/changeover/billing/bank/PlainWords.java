package changeover.billing.bank;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Names and numbers as they are compared with what a bank says; each is made once, however many lines ask. */
final class PlainWords {

    private record Number(String together, Pattern written) {}

    private final Map<String, String> plain = new HashMap<>();
    private final Map<String, List<String>> names = new HashMap<>();
    private final Map<String, Number> numbers = new HashMap<>();
    private String said = "";
    private String saidTogether = "";

    String of(String text) {
        return plain.computeIfAbsent(text, Matching::plain);
    }

    /** The words of a name that are long enough to say something. */
    List<String> words(String name) {
        return names.computeIfAbsent(
                name,
                one -> Matching.words(Matching.plain(one))
                        .filter(word -> word.length() >= Matching.SHORTEST_NAME)
                        .toList());
    }

    /** The number as people write it: with other marks between its parts or none, and no further digit after it. */
    boolean mentions(String line, String label) {
        Number number = numbers.computeIfAbsent(label, PlainWords::number);
        if (!line.equals(said)) {
            said = line;
            saidTogether = line.replace(" ", "");
        }
        return saidTogether.contains(number.together())
                && number.written().matcher(line).find();
    }

    private static Number number(String label) {
        String plain = Matching.plain(label);
        String parts = Matching.words(plain).map(Pattern::quote).collect(Collectors.joining(" ?"));
        return new Number(plain.replace(" ", ""), Pattern.compile("(?<![A-Z0-9])" + parts + "(?![0-9])"));
    }
}
