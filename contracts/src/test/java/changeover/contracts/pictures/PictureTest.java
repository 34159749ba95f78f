package changeover.contracts.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.words.Refusals;
import changeover.contracts.words.Refused;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PictureTest {

    @Test
    void a_png_and_a_jpeg_become_our_own_jpeg() throws IOException {
        for (String kind : new String[] {"png", "jpeg"}) {
            Picture picture = Picture.redrawn(image(kind, 400, 200));
            assertEquals("400 x 200", picture.width() + " x " + picture.height());
            assertEquals(picture, Picture.kept(picture.jpeg()));
            assertEquals(400, Picture.kept(picture.jpeg()).width());
        }
    }

    @Test
    void a_large_picture_is_made_smaller() throws IOException {
        Picture picture = Picture.redrawn(image("png", 4000, 1000));
        assertEquals("1600 x 400", picture.width() + " x " + picture.height());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void whichever_way_the_camera_was_held_the_red_corner_ends_where_it_was_seen(int way) throws IOException {
        Picture picture = Picture.redrawn(withOrientation(image("jpeg", 64, 32), way));
        assertEquals(way >= 5, picture.height() > picture.width());
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(picture.jpeg()));
        int right = seen.getWidth() - 3;
        int foot = seen.getHeight() - 3;
        boolean red = switch (way) {
            case 1, 5 -> isRed(seen, 3, 3);
            case 2, 6 -> isRed(seen, right, 3);
            case 3, 7 -> isRed(seen, right, foot);
            default -> isRed(seen, 3, foot);
        };
        assertTrue(red);
    }

    @Test
    void what_the_camera_wrote_into_the_file_is_gone() throws IOException {
        byte[] handedIn = withOrientation(image("jpeg", 64, 32), 6);
        assertTrue(contains(handedIn, "Exif"));
        assertTrue(!contains(Picture.redrawn(handedIn).jpeg(), "Exif"));
    }

    @Test
    void anything_else_is_refused_with_a_sentence() throws IOException {
        refused("picture.kind", "<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8));
        refused("picture.kind", image("gif", 10, 10));
        refused("picture.kind", new byte[0]);
        refused("picture.broken", new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0, 0, 0, 0, 0, 0, 0});
        byte[] cut = image("png", 200, 200);
        refused("picture.broken", java.util.Arrays.copyOf(cut, 60));
        refused("picture.too-many-bytes", new byte[Upload.MOST_BYTES + 1]);
        refused("picture.too-many-pixels", bomb());
    }

    private static void refused(String code, byte[] handedIn) {
        Refused refused = assertThrows(Refused.class, () -> Picture.redrawn(handedIn), code);
        assertEquals(code, refused.first().code());
        assertTrue(Refusals.sentence(refused.first(), Locale.CANADA_FRENCH).endsWith("."));
        assertTrue(Refusals.sentence(refused.first(), Locale.CANADA).endsWith("."));
    }

    private static byte[] image(String kind, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 4, height / 4);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, kind, bytes);
        return bytes.toByteArray();
    }

    private static byte[] withOrientation(byte[] jpeg, int way) {
        byte[] exif = {
            (byte) 0xff,
            (byte) 0xe1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            1,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) way,
            0,
            0,
            0,
            0,
            0,
            0
        };
        return ByteBuffer.allocate(jpeg.length + exif.length)
                .put(jpeg, 0, 2)
                .put(exif)
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    /** A PNG of a few bytes that says it is a hundred thousand pixels each way. */
    private static byte[] bomb() {
        ByteBuffer png = ByteBuffer.allocate(33);
        png.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        byte[] header = ByteBuffer.allocate(17)
                .put("IHDR".getBytes(StandardCharsets.US_ASCII))
                .putInt(100_000)
                .putInt(100_000)
                .put(new byte[] {8, 2, 0, 0, 0})
                .array();
        CRC32 check = new CRC32();
        check.update(header);
        return png.putInt(13).put(header).putInt((int) check.getValue()).array();
    }

    private static boolean isRed(BufferedImage image, int x, int y) {
        Color colour = new Color(image.getRGB(x, y));
        return colour.getRed() > 200 && colour.getGreen() < 80;
    }

    private static boolean contains(byte[] bytes, String ascii) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(ascii);
    }
}
