package changeover.contracts.oldsheet;

import java.util.List;
import java.util.OptionalInt;

/** Months by their names in both languages or by the beginning of one, where only one month begins so. */
final class MonthWords {

    private static final List<List<String>> NAMES = List.of(
            List.of("janvier", "january"),
            List.of("fevrier", "february"),
            List.of("mars", "march"),
            List.of("avril", "april"),
            List.of("mai", "may"),
            List.of("juin", "june"),
            List.of("juillet", "july"),
            List.of("aout", "august"),
            List.of("septembre", "september"),
            List.of("octobre", "october"),
            List.of("novembre", "november"),
            List.of("decembre", "december"));

    private MonthWords() {}

    /** @param word folded: small letters without accents */
    static OptionalInt of(String word) {
        OptionalInt found = OptionalInt.empty();
        for (int month = 1; month <= NAMES.size(); month++) {
            if (word.length() >= 3 && NAMES.get(month - 1).stream().anyMatch(name -> name.startsWith(word))) {
                if (found.isPresent()) {
                    return OptionalInt.empty();
                }
                found = OptionalInt.of(month);
            }
        }
        return found;
    }
}
