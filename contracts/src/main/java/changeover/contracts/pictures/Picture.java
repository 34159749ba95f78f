package changeover.contracts.pictures;

import java.util.Arrays;

/**
 * A picture is a JPEG that we drew ourselves: no place, no camera, no hidden second file, never larger than a paper needs.
 *
 * <p>Two pictures are equal when their bytes are.
 */
public final class Picture {

    private final byte[] jpeg;
    private final int width;
    private final int height;

    Picture(byte[] jpeg, int width, int height) {
        this.jpeg = jpeg;
        this.width = width;
        this.height = height;
    }

    /**
     * Draws anew what somebody handed in (PNG or JPEG, at most 20 MiB and 50 million pixels), upright and at most
     * {@link Upload#LONGEST_EDGE} pixels long.
     *
     * @throws changeover.contracts.words.Refused with a sentence when it is something else, too large or broken
     */
    public static Picture redrawn(byte[] handedIn) {
        return new Upload(handedIn).redrawn();
    }

    /**
     * A picture of ours, as it was kept.
     *
     * @throws IllegalArgumentException when the bytes are no JPEG
     */
    public static Picture kept(byte[] jpeg) {
        int[] size = JpegHeader.size(jpeg);
        return new Picture(jpeg.clone(), size[0], size[1]);
    }

    /** The bytes; a copy is not made, so they are not to be changed. */
    public byte[] jpeg() {
        return jpeg;
    }

    /** In pixels. */
    public int width() {
        return width;
    }

    /** In pixels. */
    public int height() {
        return height;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Picture picture && Arrays.equals(jpeg, picture.jpeg);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(jpeg);
    }

    @Override
    public String toString() {
        return "Picture " + width + " x " + height;
    }
}
