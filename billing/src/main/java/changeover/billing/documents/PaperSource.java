package changeover.billing.documents;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Draws the papers of some kinds from their frozen rows, many at a time with few questions to the database. */
public interface PaperSource {

    Set<PaperKind> kinds();

    /**
     * Runs in the business's transaction.
     *
     * @return for each wanted paper the drawing, or why it can't be drawn; one that is left out is tried again later
     */
    Map<Wanted, Drawn> draw(List<Wanted> wanted);

    /** A paper, or the reason there is none yet. */
    sealed interface Drawn {
        record Paper(DrawnPaper paper) implements Drawn {}

        record Failed(String reason) implements Drawn {}

        /** The paper, or what kept it from being drawn: one that fails does not hold up the others. */
        static Drawn of(Supplier<DrawnPaper> drawing) {
            try {
                return new Paper(drawing.get());
            } catch (RuntimeException broken) {
                return new Failed(broken.toString());
            }
        }
    }
}
