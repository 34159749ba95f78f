package changeover.billing.documents;

import java.util.BitSet;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One page to draw on: points from the upper left corner, downwards; a text stands on its base line. */
final class Canvas {

    private final float height;
    private final Ops ops = new Ops();
    private final Map<Typeface, BitSet> used;
    private @Nullable Ink fill;
    private @Nullable Ink stroke;
    private float lineWidth = -1;
    private Dash dash = Dash.SOLID;

    Canvas(float height, Map<Typeface, BitSet> used) {
        this.height = height;
        this.used = used;
    }

    static Map<Typeface, BitSet> noLetters() {
        Map<Typeface, BitSet> used = new EnumMap<>(Typeface.class);
        for (Typeface face : Typeface.values()) {
            used.put(face, new BitSet(256));
        }
        return used;
    }

    Ops ops() {
        return ops;
    }

    /** Draws the text from x to the right and says where it ended. */
    float text(Typeface face, float size, Ink ink, float x, float base, String text) {
        String plain = Letters.plain(text);
        if (plain.isEmpty()) {
            return x;
        }
        BitSet letters = used.computeIfAbsent(face, any -> new BitSet(256));
        for (int at = 0; at < plain.length(); at++) {
            letters.set(Letters.code(plain.charAt(at)));
        }
        fill(ink);
        ops.add("BT /").add(face.resource()).add(" ").add(size).add("Tf ");
        ops.add(x).add(height - base).add("Td ").addText(plain).add(" Tj ET\n");
        return x + face.width(plain, size);
    }

    /** Draws the text so that it ends at x; smaller if it is wider than the room. */
    void textRight(Typeface face, float size, Ink ink, float x, float base, float room, String text) {
        String plain = Letters.plain(text);
        float fits = fitting(face, size, room, plain);
        text(face, fits, ink, x - face.width(plain, fits), base, plain);
    }

    void textCentre(Typeface face, float size, Ink ink, float x, float base, float room, String text) {
        String plain = Letters.plain(text);
        float fits = fitting(face, size, room, plain);
        text(face, fits, ink, x - face.width(plain, fits) / 2, base, plain);
    }

    static float fitting(Typeface face, float size, float room, String plain) {
        float width = face.width(plain, size);
        return width <= room ? size : size * room / width;
    }

    void line(Ink ink, float width, float x1, float y1, float x2, float y2) {
        stroke(ink, width, Dash.SOLID);
        ops.add(x1).add(height - y1).add("m ").add(x2).add(height - y2).add("l S\n");
    }

    void dashedLine(Ink ink, float width, float x1, float y1, float x2, float y2) {
        stroke(ink, width, Dash.DASHED);
        ops.add(x1).add(height - y1).add("m ").add(x2).add(height - y2).add("l S\n");
    }

    void dottedLine(Ink ink, float width, float x1, float y1, float x2, float y2) {
        stroke(ink, width, Dash.DOTTED);
        ops.add(x1).add(height - y1).add("m ").add(x2).add(height - y2).add("l S\n");
    }

    void box(Ink ink, float width, float x, float y, float w, float h) {
        stroke(ink, width, Dash.SOLID);
        rectangle(x, y, w, h).add("S\n");
    }

    void dashedBox(Ink ink, float width, float x, float y, float w, float h) {
        stroke(ink, width, Dash.DASHED);
        rectangle(x, y, w, h).add("S\n");
    }

    void dottedBox(Ink ink, float width, float x, float y, float w, float h) {
        stroke(ink, width, Dash.DOTTED);
        rectangle(x, y, w, h).add("S\n");
    }

    void block(Ink ink, float x, float y, float w, float h) {
        fill(ink);
        rectangle(x, y, w, h).add("f\n");
    }

    void circle(Ink ink, float width, float x, float y, float radius) {
        stroke(ink, width, Dash.SOLID);
        round(x, y, radius).add("S\n");
    }

    void dashedCircle(Ink ink, float width, float x, float y, float radius) {
        stroke(ink, width, Dash.DASHED);
        round(x, y, radius).add("S\n");
    }

    void disc(Ink ink, float x, float y, float radius) {
        fill(ink);
        round(x, y, radius).add("f\n");
    }

    /** Draws a closed shape through the points x1, y1, x2, y2 and so on, filled. */
    void shape(Ink ink, float... points) {
        fill(ink);
        path(points).add("h f\n");
    }

    /** Draws the outline of a closed shape through the points. */
    void outline(Ink ink, float width, float... points) {
        stroke(ink, width, Dash.SOLID);
        path(points).add("h S\n");
    }

    /** Draws an open line through the points. */
    void track(Ink ink, float width, float... points) {
        stroke(ink, width, Dash.SOLID);
        path(points).add("S\n");
    }

    /** Draws the picture of the given number into the room; see {@link PaperFile#picture}. */
    void picture(int number, float x, float y, float w, float h) {
        ops.add("q ").add(w).add("0 0 ").add(h).add(x).add(height - y - h).add("cm /P" + number + " Do Q\n");
    }

    /** Everything drawn by the work stays inside the room. */
    void clipped(float x, float y, float w, float h, Runnable work) {
        ops.add("q ");
        rectangle(x, y, w, h).add("W n\n");
        work.run();
        ops.add("Q\n");
        forget();
    }

    /** Everything drawn by the work is turned about a point, in degrees against the clock. */
    void turned(float degrees, float x, float y, Runnable work) {
        double angle = Math.toRadians(degrees);
        float cos = (float) Math.cos(angle);
        float sin = (float) Math.sin(angle);
        float up = height - y;
        ops.add("q ");
        matrix(cos).matrix(sin).matrix(-sin).matrix(cos);
        ops.add(x - cos * x + sin * up).add(up - sin * x - cos * up).add("cm\n");
        work.run();
        ops.add("Q\n");
        forget();
    }

    private Canvas matrix(float number) {
        ops.add(Math.round(number * 100000) / 100000f + " ");
        return this;
    }

    private Ops rectangle(float x, float y, float w, float h) {
        return ops.add(x).add(height - y - h).add(w).add(h).add("re ");
    }

    private Ops round(float x, float y, float radius) {
        float up = height - y;
        float arm = radius * 0.5523f;
        ops.add(x + radius).add(up).add("m ");
        curve(x + radius, up + arm, x + arm, up + radius, x, up + radius);
        curve(x - arm, up + radius, x - radius, up + arm, x - radius, up);
        curve(x - radius, up - arm, x - arm, up - radius, x, up - radius);
        curve(x + arm, up - radius, x + radius, up - arm, x + radius, up);
        return ops.add("h ");
    }

    private void curve(float x1, float y1, float x2, float y2, float x3, float y3) {
        ops.add(x1).add(y1).add(x2).add(y2).add(x3).add(y3).add("c ");
    }

    private Ops path(float... points) {
        for (int at = 0; at < points.length; at += 2) {
            ops.add(points[at]).add(height - points[at + 1]).add(at == 0 ? "m " : "l ");
        }
        return ops;
    }

    private void fill(Ink ink) {
        if (ink != fill) {
            fill = ink;
            ops.add(ink.fill());
        }
    }

    private void stroke(Ink ink, float width, Dash wanted) {
        if (ink != stroke) {
            stroke = ink;
            ops.add(ink.stroke());
        }
        if (width != lineWidth) {
            lineWidth = width;
            ops.add(width).add("w\n");
        }
        if (wanted != dash) {
            dash = wanted;
            ops.add(wanted.order());
        }
    }

    private void forget() {
        fill = null;
        stroke = null;
        lineWidth = -1;
        dash = Dash.SOLID;
        ops.add(dash.order());
    }
}
