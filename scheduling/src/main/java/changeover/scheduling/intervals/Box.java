package changeover.scheduling.intervals;

/** The rectangle of logarithms of scale and shape that is looked at. */
record Box(double lowScale, double highScale, double lowShape, double highShape) {

    double scale(int cell, int cells) {
        return lowScale + (highScale - lowScale) * cell / (cells - 1);
    }

    double shape(int cell, int cells) {
        return lowShape + (highShape - lowShape) * cell / (cells - 1);
    }

    /** The cells from-to of this box, with two cells more on each side, never beyond it. */
    Box around(int fromScale, int toScale, int fromShape, int toShape, int cells) {
        return new Box(
                scale(Math.max(0, fromScale - 2), cells),
                scale(Math.min(cells - 1, toScale + 2), cells),
                shape(Math.max(0, fromShape - 2), cells),
                shape(Math.min(cells - 1, toShape + 2), cells));
    }

    double area() {
        return (highScale - lowScale) * (highShape - lowShape);
    }

    double clampScale(double logScale) {
        return Math.clamp(logScale, lowScale, highScale);
    }

    double clampShape(double logShape) {
        return Math.clamp(logShape, lowShape, highShape);
    }
}
