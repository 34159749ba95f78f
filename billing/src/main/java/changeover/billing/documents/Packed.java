package changeover.billing.documents;

import java.io.ByteArrayOutputStream;
import java.util.zip.Deflater;

/** What stands in every document alike is packed once, as small as it goes. */
final class Packed {

    private Packed() {}

    static byte[] bytes(byte[] plain) {
        return bytes(plain, plain.length, Deflater.BEST_COMPRESSION);
    }

    static byte[] bytes(byte[] plain, int length, int level) {
        Deflater deflater = new Deflater(level);
        try {
            deflater.setInput(plain, 0, length);
            deflater.finish();
            ByteArrayOutputStream packed = new ByteArrayOutputStream(length / 2 + 64);
            byte[] part = new byte[8192];
            while (!deflater.finished()) {
                packed.write(part, 0, deflater.deflate(part));
            }
            return packed.toByteArray();
        } finally {
            deflater.end();
        }
    }
}
