package changeover.web.session;

/**
 * A drawing the server makes: marks with a class each, whose colour the style sheet gives. Across it counts in fractions
 * of its plot, written as percent (it stretches) or as units (it scales); down it counts in units. All text is escaped.
 */
final class Drawing {

    private final StringBuilder svg = new StringBuilder(6000);
    private final double left;
    private final double width;

    private Drawing(double left, double width) {
        this.left = left;
        this.width = width;
    }

    /** A drawing as wide as its place, its letters always the same size. */
    static Drawing stretching(String classes, String id, String title, String words, double height) {
        Drawing drawing = new Drawing(0, 0);
        drawing.open(classes, id, title, words, " width=\"100%\" height=\"" + number(height) + "\"");
        return drawing;
    }

    /** A drawing in a line of words or in a table's cell, with one sentence for a reader's aid. */
    static Drawing small(String classes, String words, double height) {
        Drawing drawing = new Drawing(0, 0);
        drawing.svg.append("<svg class=\"draw ").append(classes).append("\" width=\"100%\" height=\"");
        drawing.svg
                .append(number(height))
                .append("\" role=\"img\" aria-label=\"")
                .append(escaped(words));
        drawing.svg.append("\">");
        return drawing;
    }

    /** A drawing of fixed units that scales with its place; the plot begins at {@code left}. */
    static Drawing scaling(
            String classes, String id, String title, String words, double left, double width, double height) {
        Drawing drawing = new Drawing(left, width);
        String box = " viewBox=\"0 0 " + number(left + width + 1) + " " + number(height) + "\"";
        drawing.open(classes, id, title, words, box);
        return drawing;
    }

    private void open(String classes, String id, String title, String words, String size) {
        svg.append("<svg class=\"draw ").append(classes).append("\"").append(size);
        svg.append(" role=\"img\" aria-labelledby=\"").append(id).append("-title");
        svg.append(words.isEmpty() ? "" : " " + id + "-words")
                .append("\"><title id=\"")
                .append(id);
        svg.append("-title\">").append(escaped(title)).append("</title>");
        if (!words.isEmpty()) {
            svg.append("<desc id=\"")
                    .append(id)
                    .append("-words\">")
                    .append(escaped(words))
                    .append("</desc>");
        }
    }

    /** A hatch of one class; {@code angle} 45 leans right, -45 leans left. */
    Drawing hatch(String id, String classes, double step, int angle) {
        svg.append("<pattern id=\"")
                .append(id)
                .append("\" width=\"")
                .append(number(step))
                .append("\" height=\"");
        svg.append(number(step)).append("\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(");
        svg.append(angle)
                .append(")\"><path class=\"")
                .append(classes)
                .append("\" d=\"M")
                .append(number(step / 2));
        svg.append(" 0v").append(number(step)).append("\"/></pattern>");
        return this;
    }

    /** Crossed lines of one class. */
    Drawing mesh(String id, String classes, double step) {
        String end = number(step);
        svg.append("<pattern id=\"")
                .append(id)
                .append("\" width=\"")
                .append(end)
                .append("\" height=\"")
                .append(end);
        svg.append("\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><path class=\"")
                .append(classes);
        svg.append("\" d=\"M0 0h").append(end).append("M0 0v").append(end).append("\"/></pattern>");
        return this;
    }

    Drawing line(String classes, double x1, double y1, double x2, double y2) {
        svg.append("<line class=\"")
                .append(classes)
                .append("\" x1=\"")
                .append(across(x1))
                .append("\" y1=\"");
        svg.append(number(y1))
                .append("\" x2=\"")
                .append(across(x2))
                .append("\" y2=\"")
                .append(number(y2));
        svg.append("\"/>");
        return this;
    }

    Drawing box(String classes, double from, double y, double until, double height) {
        open(classes, from, y, until, height);
        svg.append("/>");
        return this;
    }

    /** A hatch or a mesh over a box; the edge is a box of its own. */
    Drawing hatched(String hatch, double from, double y, double until, double height) {
        open("hatched", from, y, until, height);
        svg.append(" fill=\"url(#").append(hatch).append(")\"/>");
        return this;
    }

    private void open(String classes, double from, double y, double until, double height) {
        svg.append("<rect class=\"")
                .append(classes)
                .append("\" x=\"")
                .append(across(from))
                .append("\" y=\"");
        svg.append(number(y)).append("\" width=\"").append(length(until - from)).append("\" height=\"");
        svg.append(number(Math.max(0, height))).append("\"/>");
        svg.setLength(svg.length() - 2);
    }

    Drawing circle(String classes, double x, double y, double radius) {
        svg.append("<circle class=\"")
                .append(classes)
                .append("\" cx=\"")
                .append(across(x))
                .append("\" cy=\"");
        svg.append(number(y)).append("\" r=\"").append(number(radius)).append("\"/>");
        return this;
    }

    /** Marks drawn in units around a point. */
    Drawing at(double x, double y, String marks) {
        svg.append("<svg x=\"").append(across(x)).append("\" y=\"").append(number(y));
        svg.append("\" overflow=\"visible\">").append(marks).append("</svg>");
        return this;
    }

    /**
     * Letters.
     *
     * @param anchor {@code start}, {@code middle} or {@code end}
     * @param shift units to the right of the point
     */
    Drawing text(String classes, String anchor, double x, double shift, double y, String words) {
        svg.append("<text class=\"")
                .append(classes)
                .append("\" x=\"")
                .append(across(x))
                .append("\" y=\"");
        svg.append(number(y))
                .append("\" dx=\"")
                .append(number(shift))
                .append("\" text-anchor=\"")
                .append(anchor);
        svg.append("\">").append(escaped(words)).append("</text>");
        return this;
    }

    String done() {
        return svg.append("</svg>").toString();
    }

    private String across(double fraction) {
        return width == 0 ? percent(fraction) : number(left + fraction * width);
    }

    private String length(double fraction) {
        return width == 0 ? percent(fraction) : number(fraction * width);
    }

    private static String percent(double fraction) {
        return shortest(Math.round(fraction * 10_000) / 100.0) + "%";
    }

    private static String number(double value) {
        return shortest(Math.round(value * 10) / 10.0);
    }

    private static String shortest(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
