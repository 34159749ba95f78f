package changeover.web.office;

import java.util.List;

/**
 * A filter slot's own rhythm, in the reader's words.
 *
 * @param sentence what was seen, and what follows from it
 * @param follows word, learned or sold: whose rhythm the household's list follows
 * @param often that rhythm
 * @param why a person's reason; empty without a person's word
 * @param who who decided, and when
 */
public record RhythmView(
        String sentence,
        String follows,
        String often,
        String why,
        String who,
        String curve,
        List<Fact> facts,
        List<Point> points,
        List<Line> told) {

    public record Fact(String caption, String value) {}

    /** The chance of being grey after a time, and between which chances eight likely lives of ten say it lies. */
    public record Point(String after, String chance, String between) {}

    /**
     * What somebody saw or did.
     *
     * @param id of what may be taken back; empty for a visit's record and for a ticked task
     * @param visit the visit it stands in; empty for the household's word
     */
    public record Line(String id, String day, String what, String who, String visit) {}
}
