package changeover.contracts.merging;

import changeover.contracts.words.Folded;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A street as two people may write it differently: its number, its dwelling, and the words of its name without those that
 * only say what sort of street it is. {@code "12, rue des Érables app. 3"} and {@code "12 Erables #3"} are the same.
 *
 * @param number the first figures, with a letter behind them; empty where none is written
 * @param dwelling empty where none is written
 */
record PlainStreet(String number, String dwelling, Set<String> words) {

    private static final Set<String> SORTS = Set.of(
            "rue",
            "street",
            "st",
            "saint",
            "sainte",
            "ste",
            "avenue",
            "ave",
            "av",
            "boulevard",
            "boul",
            "blvd",
            "bd",
            "bl",
            "chemin",
            "ch",
            "che",
            "road",
            "rd",
            "route",
            "rte",
            "drive",
            "dr",
            "promenade",
            "prom",
            "place",
            "pl",
            "lane",
            "ln",
            "court",
            "crt",
            "ct",
            "crescent",
            "cres",
            "croissant",
            "crois",
            "terrasse",
            "terr",
            "terrace",
            "way",
            "rang",
            "rg",
            "montee",
            "cote",
            "impasse",
            "imp",
            "row",
            "circle",
            "cir",
            "north",
            "nord",
            "n",
            "south",
            "sud",
            "s",
            "east",
            "est",
            "e",
            "west",
            "ouest",
            "o",
            "w");

    private static final Set<String> SMALL =
            Set.of("de", "du", "des", "la", "le", "les", "l", "d", "the", "of", "et", "and");
    private static final Set<String> DWELLINGS = Set.of(
            "app", "apt", "appartement", "apartment", "unit", "unite", "suite", "logement", "log", "bureau", "porte");

    PlainStreet {
        words = Set.copyOf(words);
    }

    /** @param unitLabel the dwelling, where it is written apart */
    static PlainStreet of(String street, @Nullable String unitLabel) {
        List<String> said =
                Arrays.asList(Folded.of(street.replace("#", " app ")).split(" "));
        String number = "";
        String dwelling = label(unitLabel);
        List<String> words = new ArrayList<>();
        for (int at = 0; at < said.size(); at++) {
            String word = said.get(at);
            if (DWELLINGS.contains(word) && at + 1 < said.size()) {
                dwelling = said.get(++at);
            } else if (number.isEmpty() && words.isEmpty() && word.matches("\\d+[a-z]?")) {
                number = word;
            } else {
                words.add(word);
            }
        }
        Set<String> telling = words.stream()
                .filter(word -> !SMALL.contains(word) && !SORTS.contains(word))
                .collect(Collectors.toSet());
        return new PlainStreet(number, dwelling, telling.isEmpty() ? Set.copyOf(words) : telling);
    }

    private static String label(@Nullable String unitLabel) {
        return Arrays.stream(Folded.of(unitLabel).split(" "))
                .filter(word -> !DWELLINGS.contains(word))
                .collect(Collectors.joining(" "));
    }

    /** The same number and name, and no two different dwellings. */
    boolean isLike(PlainStreet other) {
        return !number.isEmpty()
                && number.equals(other.number)
                && !words.isEmpty()
                && words.equals(other.words)
                && !isAnotherDwelling(other);
    }

    boolean isAnotherDwelling(PlainStreet other) {
        return !dwelling.isEmpty() && !other.dwelling.isEmpty() && !dwelling.equals(other.dwelling);
    }
}
