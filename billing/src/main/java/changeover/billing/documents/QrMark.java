package changeover.billing.documents;

import io.nayuki.qrcodegen.QrCode;

/** A QR code (ISO/IEC 18004) as ink: rows of dark modules are drawn as one block, with the quiet zone around. */
final class QrMark {

    private static final int QUIET = 4;

    private QrMark() {}

    /** Draws it into a square, its quiet zone included. */
    static void draw(Canvas page, String text, float x, float y, float size) {
        QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
        float module = size / (code.size + 2 * QUIET);
        page.block(Ink.WHITE, x, y, size, size);
        for (int row = 0; row < code.size; row++) {
            int from = -1;
            for (int column = 0; column <= code.size; column++) {
                boolean dark = column < code.size && code.getModule(column, row);
                if (dark && from < 0) {
                    from = column;
                } else if (!dark && from >= 0) {
                    page.block(
                            Ink.BLACK,
                            x + (QUIET + from) * module,
                            y + (QUIET + row) * module,
                            (column - from) * module,
                            module + 0.02f);
                    from = -1;
                }
            }
        }
    }
}
