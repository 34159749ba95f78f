package changeover.contracts.merging;

import changeover.contracts.words.Folded;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Two homes look like one when they have the same street and number in the same place, or the same number, person and
 * telephone; two dwellings of one building never do. Whether they are one a person decides.
 */
public final class Likeness {

    /** What two homes have in common. */
    public enum Common {
        STREET,
        PERSON,
        TELEPHONE
    }

    /**
     * A home as it is compared.
     *
     * @param people names of those who have a part in it
     * @param telephones as they are written
     */
    public record Dwelling(
            UUID id,
            String street,
            @Nullable String unitLabel,
            String city,
            @Nullable String postal,
            Set<String> people,
            Set<String> telephones) {

        public Dwelling {
            people = Set.copyOf(people);
            telephones = Set.copyOf(telephones);
        }
    }

    /** Two that look like one, the earlier entered first. */
    public record Pair(UUID one, UUID other, Set<Common> common) {

        public Pair {
            common = Set.copyOf(common);
        }
    }

    private static final int FIGURES = 10;

    /** A dwelling in plain words. */
    private record Plain(
            Dwelling home, PlainStreet street, String city, String postal, Set<String> people, Set<String> telephones) {

        static Plain of(Dwelling home) {
            return new Plain(
                    home,
                    PlainStreet.of(home.street(), home.unitLabel()),
                    Folded.of(home.city()),
                    Folded.of(home.postal()).replace(" ", ""),
                    home.people().stream().map(Plain::person).collect(Collectors.toSet()),
                    home.telephones().stream()
                            .flatMap(said -> Arrays.stream(said.split("[/;,]")))
                            .map(Plain::figures)
                            .filter(said -> said.length() >= 7)
                            .collect(Collectors.toSet()));
        }

        /** The order of the names says nothing. */
        private static String person(String name) {
            return Arrays.stream(Folded.of(name).split(" ")).sorted().collect(Collectors.joining(" "));
        }

        private static String figures(String said) {
            String figures = said.replaceAll("(?i)(?:ext|poste|x|#).*$", "").replaceAll("[^0-9]", "");
            return figures.length() > FIGURES ? figures.substring(figures.length() - FIGURES) : figures;
        }
    }

    private Likeness() {}

    /** Each pair once, what has most in common first; homes of one number are compared, so a town's thousands are soon done. */
    public static List<Pair> among(List<Dwelling> homes) {
        Map<String, List<Plain>> byNumber = new HashMap<>();
        for (Dwelling home : homes) {
            Plain plain = Plain.of(home);
            byNumber.computeIfAbsent(plain.street().number(), _ -> new ArrayList<>())
                    .add(plain);
        }
        List<Pair> pairs = new ArrayList<>();
        byNumber.forEach((number, together) -> {
            if (!number.isEmpty()) {
                for (int one = 0; one < together.size(); one++) {
                    for (int other = one + 1; other < together.size(); other++) {
                        pair(together.get(one), together.get(other), pairs);
                    }
                }
            }
        });
        pairs.sort(Comparator.comparingInt((Pair pair) -> -pair.common().size())
                .thenComparing(Pair::one)
                .thenComparing(Pair::other));
        return List.copyOf(pairs);
    }

    private static void pair(Plain one, Plain other, List<Pair> pairs) {
        if (one.street().isAnotherDwelling(other.street())) {
            return;
        }
        boolean place = one.city().equals(other.city())
                || !one.postal().isEmpty() && one.postal().equals(other.postal());
        Set<Common> common = EnumSet.noneOf(Common.class);
        if (place && one.street().isLike(other.street())) {
            common.add(Common.STREET);
        }
        if (one.people().stream().anyMatch(other.people()::contains)) {
            common.add(Common.PERSON);
        }
        if (one.telephones().stream().anyMatch(other.telephones()::contains)) {
            common.add(Common.TELEPHONE);
        }
        if (common.contains(Common.STREET) || common.size() == 2) {
            boolean inOrder = one.home().id().compareTo(other.home().id()) <= 0;
            pairs.add(new Pair(
                    inOrder ? one.home().id() : other.home().id(),
                    inOrder ? other.home().id() : one.home().id(),
                    common));
        }
    }
}
