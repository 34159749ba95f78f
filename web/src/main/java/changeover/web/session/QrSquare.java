package changeover.web.session;

import io.nayuki.qrcodegen.QrCode;

/** A square that a phone's camera opens: it carries one address, drawn black on white whatever the theme. */
public final class QrSquare {

    private static final int QUIET = 4;

    private QrSquare() {}

    /**
     * The square as SVG, scaling with its place.
     *
     * @param address what it opens, whole, with its scheme
     * @param words what a reader's aid says of it
     */
    public static String svg(String address, String words) {
        QrCode code = QrCode.encodeText(address, QrCode.Ecc.MEDIUM);
        int side = code.size + 2 * QUIET;
        StringBuilder dots = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    dots.append('M')
                            .append(x + QUIET)
                            .append(' ')
                            .append(y + QUIET)
                            .append("h1v1h-1z");
                }
            }
        }
        return "<svg class=\"qr\" viewBox=\"0 0 " + side + " " + side + "\" role=\"img\" aria-label=\""
                + Drawing.escaped(words) + "\" shape-rendering=\"crispEdges\"><path fill=\"#fff\" d=\"M0 0h" + side
                + "v"
                + side + "H0z\"/><path fill=\"#000\" d=\"" + dots + "\"/></svg>";
    }
}
