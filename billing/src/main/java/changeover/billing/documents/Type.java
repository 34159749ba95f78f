package changeover.billing.documents;

/** The sizes of type on paper, in points; nothing is smaller than 9. */
final class Type {

    static final float TITLE = 22.5f;
    static final float NAME = 17;
    static final float SECTION = 14.25f;
    static final float TOTAL = 15;
    static final float TEXT = 9.75f;
    static final float TEXT_LINE = 13;
    static final float SMALL = 9;
    static final float SMALL_LINE = 11.75f;

    private Type() {}
}
