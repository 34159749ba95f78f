package changeover.billing.documents;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Columns of facts under the head of a paper: a small caption, then its lines, the first one bold where it is a name. */
final class FactColumns {

    private static final float GAP = 14;

    private final List<List<Fact>> columns = new ArrayList<>();
    private final List<Float> widths = new ArrayList<>();

    private record Fact(String caption, @Nullable String bold, List<String> lines) {}

    FactColumns column(float width) {
        columns.add(new ArrayList<>());
        widths.add(width);
        return this;
    }

    FactColumns fact(String caption, @Nullable String bold, List<String> lines) {
        columns.getLast().add(new Fact(caption, bold, lines));
        return this;
    }

    void draw(Flow flow) {
        float deepest = flow.y();
        float x = Flow.LEFT;
        for (int number = 0; number < columns.size(); number++) {
            deepest = Math.max(deepest, column(flow, x, widths.get(number) - GAP, columns.get(number)));
            x += widths.get(number);
        }
        flow.to(deepest);
    }

    private static float column(Flow flow, float x, float room, List<Fact> facts) {
        float base = flow.y() + 16;
        for (Fact fact : facts) {
            flow.page().text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, x, base, fact.caption());
            base += Type.TEXT_LINE;
            if (fact.bold() != null) {
                base = flow.lines(
                        Typeface.BOLD,
                        Type.TEXT,
                        Type.TEXT_LINE,
                        Ink.INK,
                        x,
                        base,
                        Lines.wrap(Typeface.BOLD, Type.TEXT, room, fact.bold()));
            }
            for (String line : fact.lines()) {
                base = flow.lines(
                        Typeface.REGULAR,
                        Type.TEXT,
                        Type.TEXT_LINE,
                        Ink.INK,
                        x,
                        base,
                        Lines.wrap(Typeface.REGULAR, Type.TEXT, room, line));
            }
            base += 4;
        }
        return base - Type.TEXT_LINE;
    }
}
