package changeover.billing.documents;

import java.util.Locale;

/** Which way the air goes through a filter, or which way up a core stands, as one stands before it. */
public enum Air {
    LEFT,
    RIGHT,
    UP,
    DOWN;

    String words(Words words) {
        return words.say("air." + name().toLowerCase(Locale.ROOT));
    }

    /** A big arrow about a point, so long and so thick. */
    void draw(Canvas page, Ink ink, float x, float y, float length) {
        float half = length / 2;
        float head = length * 0.42f;
        float wide = length * 0.3f;
        float thick = length * 0.11f;
        float[] right = {
            -half,
            -thick,
            half - head,
            -thick,
            half - head,
            -wide,
            half,
            0,
            half - head,
            wide,
            half - head,
            thick,
            -half,
            thick
        };
        float[] shape = new float[right.length];
        for (int at = 0; at < right.length; at += 2) {
            float along = right[at];
            float across = right[at + 1];
            shape[at] = x
                    + switch (this) {
                        case RIGHT -> along;
                        case LEFT -> -along;
                        case UP, DOWN -> across;
                    };
            shape[at + 1] = y
                    + switch (this) {
                        case RIGHT, LEFT -> across;
                        case DOWN -> along;
                        case UP -> -along;
                    };
        }
        page.shape(ink, shape);
    }
}
