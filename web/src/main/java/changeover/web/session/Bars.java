package changeover.web.session;

import java.util.List;

/**
 * Amounts side by side, a bar each from one line: to the right of it what is above nought, to the left and cross-hatched what is
 * below. The same figures stand in a table on the page.
 */
public final class Bars {

    /**
     * One bar.
     *
     * @param size its length, of any measure that all have in common
     * @param words what stands at its end
     */
    public record Bar(String label, long size, String words) {}

    private static final double ROW = 40;
    private static final double TOP = 4;
    private static final double ROOM = 0.72;

    private Bars() {}

    /**
     * @param id of the drawing, one a page
     * @param words one sentence: what the picture says
     */
    public static String svg(String id, String title, String words, List<Bar> bars) {
        long least = Math.min(0, bars.stream().mapToLong(Bar::size).min().orElse(0));
        long most = Math.max(0, bars.stream().mapToLong(Bar::size).max().orElse(0));
        double span = Math.max(1, (double) most - least);
        double zero = least < 0 ? 0.14 + (-least / span) * (ROOM - 0.14) : 0.001;
        double right = ROOM - (least < 0 ? 0.14 : 0);
        Drawing svg = Drawing.stretching("bars", id, title, words, TOP + ROW * bars.size() + 4);
        svg.hatch(id + "-over", "ih", 6, 45).mesh(id + "-below", "rh", 5);
        double y = TOP;
        for (Bar bar : bars) {
            double end = zero + bar.size() / span * right;
            svg.text("b light", "start", 0, 0, y + 12, bar.label());
            double from = Math.min(zero, end);
            double until = Math.max(zero, end);
            String hatch = bar.size() < 0 ? id + "-below" : id + "-over";
            if (bar.size() != 0) {
                svg.box("paper", from, y + 18, until, 14).hatched(hatch, from, y + 18, until, 14);
                svg.box(bar.size() < 0 ? "t" : "i", from, y + 18, until, 14);
            }
            if (bar.size() < 0) {
                svg.text("r", "end", from, -6, y + 30, bar.words());
            } else {
                svg.text("b", "start", until, 6, y + 30, bar.words());
            }
            svg.line("i", zero, y + 15, zero, y + 35);
            y += ROW;
        }
        return svg.done();
    }
}
