package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import java.util.List;

/**
 * A finding the technician can choose, held in both languages, so that every customer reads it in their own.
 *
 * @param kinds the kinds of equipment it may be said of; empty for any
 */
public record Sentence(String code, List<String> kinds, FindingLevel level, Wording wording) {

    public Sentence {
        kinds = List.copyOf(kinds);
    }

    public boolean fits(String kind) {
        return kinds.isEmpty() || kinds.contains(kind);
    }
}
