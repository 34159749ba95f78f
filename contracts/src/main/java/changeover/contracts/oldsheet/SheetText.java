package changeover.contracts.oldsheet;

import changeover.contracts.words.Refusal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A file of an old program as text: UTF-8, or else the Western letters that such programs write. */
final class SheetText {

    private static final int MOST_BYTES = 5_000_000;

    private SheetText() {}

    /** @throws changeover.contracts.words.Refused when it is too large, empty, or no text */
    static String of(byte[] bytes) {
        if (bytes.length == 0) {
            throw Refusal.of("oldsheet.choose").at("file").thrown();
        }
        if (bytes.length > MOST_BYTES) {
            throw Refusal.of("oldsheet.too-large", Map.of("most", MOST_BYTES / 1_000_000))
                    .at("file")
                    .thrown();
        }
        String text = decoded(bytes);
        if (text.indexOf('\0') >= 0 || text.startsWith("PK\u0003\u0004")) {
            throw Refusal.of("oldsheet.no-text").at("file").thrown();
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String decoded(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException older) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }
}
