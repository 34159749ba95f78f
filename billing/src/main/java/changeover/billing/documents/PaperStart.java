package changeover.billing.documents;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a drawn paper has in common with hundreds of others: its file begins with the colours and the typefaces, so these bytes are
 * kept once a business and each paper keeps what follows them.
 *
 * <p>A file in PDF (ISO 32000-1, 7.5) is a row of numbered objects after its first line; the objects of a start are streams whose
 * length stands in their own dictionary.
 */
final class PaperStart {

    /** Shorter starts are not worth a second look at the database, in bytes. */
    private static final int WORTH_SHARING = 4096;

    /** The longest dictionary of a colour profile or a typeface, in bytes; a longer one is something else. */
    private static final int LONGEST_HEAD = 160;

    /** The colours and two typefaces; the third, of headings, is cut to the letters of one paper's headings. */
    private static final int STREAMS = 3;

    private static final Pattern HEAD = Pattern.compile("\\d{1,9} 0 obj\n<<([^<>]*)>>stream\n");
    private static final Pattern LENGTH = Pattern.compile("/Length (\\d{1,9})(?=[/ >]|$)");
    private static final byte[] END = "\nendstream\nendobj\n".getBytes(StandardCharsets.ISO_8859_1);

    private PaperStart() {}

    /** How many of the file's first bytes are colours and typefaces; 0 where they are too few to be kept apart. */
    static int length(byte[] file) {
        int at = firstObject(file);
        for (int stream = 0; stream < STREAMS; stream++) {
            int end = after(file, at);
            if (end == 0) {
                break;
            }
            at = end;
        }
        return at >= WORTH_SHARING ? at : 0;
    }

    /** Behind the first line and the line of four high bytes that marks a file as binary. */
    private static int firstObject(byte[] file) {
        int line = 0;
        for (int at = 0; at < Math.min(file.length, 32); at++) {
            if (file[at] == '\n' && ++line == 2) {
                return at + 1;
            }
        }
        return 0;
    }

    /** Where the colours or typeface at this place end; 0 where something else stands. */
    private static int after(byte[] file, int at) {
        int most = Math.min(LONGEST_HEAD, file.length - at);
        Matcher head = HEAD.matcher(new String(file, at, most, StandardCharsets.ISO_8859_1));
        if (!head.lookingAt()
                || !(head.group(1).contains("/Length1 ") || head.group(1).endsWith("/N 3"))) {
            return 0;
        }
        Matcher length = LENGTH.matcher(head.group(1));
        if (!length.find()) {
            return 0;
        }
        long end = (long) at + head.end() + Long.parseLong(length.group(1)) + END.length;
        return end <= file.length && Arrays.equals(file, (int) end - END.length, (int) end, END, 0, END.length)
                ? (int) end
                : 0;
    }
}
