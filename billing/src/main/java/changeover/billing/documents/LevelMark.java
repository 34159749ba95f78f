package changeover.billing.documents;

import changeover.contracts.catalogue.FindingLevel;

/** The four levels, told apart by edge and shape; colour comes last, so that a black and white printer loses nothing. */
final class LevelMark {

    private LevelMark() {}

    static void frame(Canvas page, FindingLevel level, float x, float y, float w, float h) {
        switch (level) {
            case INFORMATION -> page.dottedBox(Ink.LINE, 1, x + 0.5f, y + 0.5f, w - 1, h - 1);
            case RECOMMENDED -> {
                page.box(Ink.LINE, 0.75f, x + 0.4f, y + 0.4f, w - 0.8f, h - 0.8f);
                page.block(Ink.INK, x, y, 3.75f, h);
            }
            case URGENT -> {
                page.block(Ink.URGENT_GROUND, x, y, w, h);
                page.box(Ink.RED, 1.9f, x + 1, y + 1, w - 2, h - 2);
            }
            case DO_NOT_USE -> {
                page.block(Ink.INK, x, y, w, h);
                hazard(page, x, y, w, 8);
            }
        }
    }

    /** A hazard stripe: slanting blocks of ink on white, edged. */
    static void hazard(Canvas page, float x, float y, float w, float h) {
        page.block(Ink.WHITE, x, y, w, h);
        page.clipped(x, y, w, h, () -> {
            for (float at = x - h; at < x + w + h; at += 14) {
                page.shape(Ink.INK, at, y + h, at + h, y, at + h + 7, y, at + 7, y + h);
            }
        });
        page.box(Ink.INK, 0.75f, x + 0.4f, y + 0.4f, w - 0.8f, h - 0.8f);
    }

    /** The shape about its middle. */
    static void icon(Canvas page, FindingLevel level, float x, float y) {
        switch (level) {
            case INFORMATION -> {
                page.circle(Ink.INK, 1.2f, x, y, 8);
                page.textCentre(Typeface.BOLD, 11, Ink.INK, x, y + 4, 12, "i");
            }
            case RECOMMENDED -> {
                page.outline(
                        Ink.INK, 1.2f, x - 8, y - 7, x + 8, y - 7, x + 8, y + 4, x - 2, y + 4, x - 5, y + 8, x - 5,
                        y + 4, x - 8, y + 4);
                page.line(Ink.INK, 1, x - 5, y - 3.4f, x + 5, y - 3.4f);
                page.line(Ink.INK, 1, x - 5, y + 0.2f, x + 2, y + 0.2f);
            }
            case URGENT -> {
                page.shape(Ink.RED, x, y - 9, x + 9.5f, y + 7.5f, x - 9.5f, y + 7.5f);
                page.textCentre(Typeface.BOLD, 11, Ink.WHITE, x, y + 5.8f, 12, "!");
            }
            case DO_NOT_USE -> {
                float far = 9;
                float near = 3.7f;
                page.shape(
                        Ink.WHITE, x - near, y - far, x + near, y - far, x + far, y - near, x + far, y + near, x + near,
                        y + far, x - near, y + far, x - far, y + near, x - far, y - near);
                page.block(Ink.INK, x - 5.5f, y - 1.7f, 11, 3.4f);
            }
        }
    }
}
