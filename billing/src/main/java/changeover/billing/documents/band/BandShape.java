package changeover.billing.documents.band;

/**
 * How much room a year band has; heights are the drawing's own units, widths too.
 *
 * @param plotWidth the width of the twelve months, or the narrowest it may become
 * @param strip height of the month strip
 * @param row from one machine's bracket to the next
 * @param lane what a second bracket on the same days adds to its row
 * @param namesAbove whether a machine's name stands above its bracket instead of at the left
 * @param ring radius of a visit's ring
 */
public record BandShape(double plotWidth, double strip, double row, double lane, boolean namesAbove, double ring) {

    /** At the desk: 1,200 wide, 195 of it for the names. */
    public static final BandShape DESK = new BandShape(1004, 27, 29, 12, false, 19);

    /** On a phone: names above, as narrow as 288. */
    public static final BandShape PHONE = new BandShape(288, 27, 43, 14, true, 18);

    /** In a document: rows of 17. */
    public static final BandShape PAPER = new BandShape(1004, 24, 17, 10, false, 17);
}
