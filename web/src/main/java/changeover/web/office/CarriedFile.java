package changeover.web.office;

import changeover.contracts.words.Refusal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/** A file that was looked at comes back with the yes, packed into a field of the form, so that nobody chooses it twice. */
final class CarriedFile {

    /** What fits into a field of a form, in characters. */
    private static final int FIELD = 60_000;

    /** The most that is unpacked, in bytes. */
    private static final int LARGEST = 2_000_000;

    private CarriedFile() {}

    /** Empty when it is too large to be carried; then the file is chosen once more. */
    static String close(byte[] file) {
        var packed = new ByteArrayOutputStream();
        try (var deflater = new DeflaterOutputStream(packed)) {
            deflater.write(file);
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        String text = Base64.getUrlEncoder().withoutPadding().encodeToString(packed.toByteArray());
        return text.length() > FIELD ? "" : text;
    }

    /** @throws changeover.contracts.words.Refused for what no page of ours carried */
    static byte[] open(String carried) {
        try (var inflater = new InflaterInputStream(
                new ByteArrayInputStream(Base64.getUrlDecoder().decode(carried)))) {
            return carried.isEmpty() ? new byte[0] : inflater.readNBytes(LARGEST);
        } catch (IOException | IllegalArgumentException notOurs) {
            throw Refusal.of("pricesfile.choose").at("file").thrown();
        }
    }
}
