package changeover.web.office;

import java.util.List;

/**
 * A page of what was changed, in the reader's words.
 *
 * @param name the record's own name; empty for a whole list
 * @param back where the record stands
 * @param entered who entered the record, empty when nobody in particular did
 * @param enteredAt when, empty for a whole list
 * @param newer the address of the page before, or empty
 * @param older the address of the page after, or empty
 */
public record ChangesView(
        String name, String back, String entered, String enteredAt, List<Line> lines, String newer, String older) {

    ChangesView enteredBy(String person, String when) {
        return new ChangesView(name, back, person, when, lines, newer, older);
    }

    /**
     * @param thing what kind of thing, and which
     * @param act update, delete or insert
     * @param by empty when no person did it
     */
    public record Line(String when, String thing, String act, String field, String before, String after, String by) {}
}
