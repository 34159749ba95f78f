package changeover.contracts.pictures;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/** Something handed in as a picture: its header is read before a pixel is decoded, so that a bomb costs nothing. */
final class Upload {

    static final int LONGEST_EDGE = 1600;
    static final int MOST_BYTES = 20 * 1024 * 1024;
    static final long MOST_PIXELS = 50_000_000;

    private static final float QUALITY = 0.82f;

    private final byte[] bytes;

    Upload(byte[] bytes) {
        this.bytes = bytes;
    }

    Picture redrawn() {
        if (bytes.length > MOST_BYTES) {
            throw refused("picture.too-many-bytes", Map.of("most", MOST_BYTES / 1024 / 1024));
        }
        String kind = kind();
        try {
            return encoded(upright(decoded(kind), kind.equals("jpeg") ? JpegHeader.orientation(bytes) : 1));
        } catch (IOException | RuntimeException broken) {
            if (broken instanceof Refused refused) {
                throw refused;
            }
            throw refused("picture.broken", Map.of());
        }
    }

    private String kind() {
        if (bytes.length > 3 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xd8 && (bytes[2] & 0xff) == 0xff) {
            return "jpeg";
        }
        if (bytes.length > 8 && (bytes[0] & 0xff) == 0x89 && bytes[1] == 'P' && bytes[2] == 'N' && bytes[3] == 'G') {
            return "png";
        }
        throw refused("picture.kind", Map.of());
    }

    private BufferedImage decoded(String kind) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind).next();
        try (ImageInputStream input = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(input, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if ((long) width * height > MOST_PIXELS) {
                throw refused("picture.too-many-pixels", Map.of("most", MOST_PIXELS / 1_000_000));
            }
            ImageReadParam coarse = reader.getDefaultReadParam();
            int step = Math.max(1, Math.max(width, height) / (2 * LONGEST_EDGE));
            coarse.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, coarse);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage upright(BufferedImage read, int orientation) {
        double scale = Math.min(1d, (double) LONGEST_EDGE / Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(read.getHeight() * scale));
        boolean lying = orientation >= 5;
        BufferedImage upright =
                new BufferedImage(lying ? height : width, lying ? width : height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = upright.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, upright.getWidth(), upright.getHeight());
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.transform(turn(orientation, width, height));
        pen.drawImage(read, 0, 0, width, height, null);
        pen.dispose();
        return upright;
    }

    /** Exif's eight ways, as the matrix that sets them right. */
    private static AffineTransform turn(int orientation, int w, int h) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }

    private static Picture encoded(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        try (ImageOutputStream output = ImageIO.createImageOutputStream(jpeg)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(output);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return new Picture(jpeg.toByteArray(), image.getWidth(), image.getHeight());
    }

    private static Refused refused(String code, Map<String, ?> facts) {
        return Refusal.of(code, facts).at("picture").thrown();
    }
}
