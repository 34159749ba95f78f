package changeover.billing.notices;

/** A name or a subject is one line: whatever could begin another line, or turn the text round, is a space. */
final class OneLine {

    private static final int LONGEST = 200;

    private OneLine() {}

    static String of(String text) {
        StringBuilder line = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            int type = Character.getType(point);
            boolean harmful = type == Character.CONTROL
                    || type == Character.FORMAT
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR
                    || type == Character.SURROGATE;
            if (harmful) {
                line.append(' ');
            } else {
                line.appendCodePoint(point);
            }
        });
        String said = line.toString().replaceAll(" {2,}", " ").strip();
        return said.codePointCount(0, said.length()) <= LONGEST
                ? said
                : said.substring(0, said.offsetByCodePoints(0, LONGEST));
    }
}
