package changeover.contracts.takeover;

import changeover.contracts.words.Folded;
import java.util.Set;

/**
 * What a column of a brought list is called, in either language.
 *
 * @param en the name under which its cells are asked for
 * @param needed whether a file without it is not this list
 */
public record Title(String en, String fr, boolean needed) {

    public static Title needed(String en, String fr) {
        return new Title(en, fr, true);
    }

    public static Title more(String en, String fr) {
        return new Title(en, fr, false);
    }

    boolean isCalled(String folded) {
        return Folded.of(en).equals(folded) || Folded.of(fr).equals(folded);
    }

    /** @param folded the titles of a file, as {@link Folded} writes them */
    public boolean isAmong(Set<String> folded) {
        return folded.stream().anyMatch(this::isCalled);
    }
}
