package changeover.contracts.pictures;

/** What the segments before a JPEG's image data say: its size and which way up the camera was held (ITU T.81, Exif 2.3). */
final class JpegHeader {

    private static final int EXIF_ORIENTATION = 0x0112;

    private JpegHeader() {}

    /** Width and height in pixels. */
    static int[] size(byte[] jpeg) {
        for (int at = 2; at + 9 < jpeg.length; at = next(jpeg, at)) {
            int marker = jpeg[at + 1] & 0xff;
            boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
            if (frame) {
                return new int[] {big(jpeg, at + 7), big(jpeg, at + 5)};
            }
        }
        throw new IllegalArgumentException("no JPEG");
    }

    /** 1 to 8 as Exif numbers the ways; 1 (upright) when nothing is said. */
    static int orientation(byte[] jpeg) {
        for (int at = 2; at + 4 < jpeg.length && (jpeg[at + 1] & 0xff) != 0xda; at = next(jpeg, at)) {
            boolean exif = (jpeg[at + 1] & 0xff) == 0xe1 && at + 20 < jpeg.length && jpeg[at + 4] == 'E';
            if (exif) {
                return exifOrientation(jpeg, at + 10, Math.min(next(jpeg, at), jpeg.length));
            }
        }
        return 1;
    }

    private static int exifOrientation(byte[] jpeg, int start, int end) {
        boolean little = jpeg[start] == 'I';
        long offset = little
                ? word(jpeg, start + 4, end, true) | (long) word(jpeg, start + 6, end, true) << 16
                : (long) word(jpeg, start + 4, end, false) << 16 | word(jpeg, start + 6, end, false);
        if (offset < 8 || start + offset + 2 > end) {
            return 1;
        }
        int directory = (int) (start + offset);
        int count = word(jpeg, directory, end, little);
        for (int number = 0; number < count; number++) {
            int entry = directory + 2 + number * 12;
            if (entry + 12 > end) {
                return 1;
            }
            if (word(jpeg, entry, end, little) == EXIF_ORIENTATION) {
                int way = word(jpeg, entry + 8, end, little);
                return way >= 1 && way <= 8 ? way : 1;
            }
        }
        return 1;
    }

    private static int word(byte[] bytes, int at, int end, boolean little) {
        if (at + 2 > end) {
            return 0;
        }
        int first = bytes[at] & 0xff;
        int second = bytes[at + 1] & 0xff;
        return little ? second << 8 | first : first << 8 | second;
    }

    private static int big(byte[] bytes, int at) {
        return (bytes[at] & 0xff) << 8 | bytes[at + 1] & 0xff;
    }

    private static int next(byte[] jpeg, int at) {
        if ((jpeg[at] & 0xff) != 0xff) {
            return Integer.MAX_VALUE - 64;
        }
        return at + 2 + big(jpeg, at + 2);
    }
}
