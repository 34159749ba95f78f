package changeover.billing.bank;

import changeover.contracts.words.Refusal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** A bank's file as text: UTF-8, or else the Western letters that older programs of banks write. */
final class BankText {

    private static final int MOST_BYTES = 5_000_000;

    /** What is not printed, directions of writing and halves of surrogate pairs with it. */
    private static final String NO_LETTERS = "[\\p{Cntrl}\\p{Cf}\\p{Cs}\\s\u00a0]+";

    private BankText() {}

    static String of(byte[] bytes) {
        if (bytes.length == 0) {
            throw Refusal.of("bank.choose").at("file").thrown();
        }
        if (bytes.length > MOST_BYTES) {
            throw Refusal.of("bank.too-large").at("file").thrown();
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException older) {
            text = new String(bytes, Charset.forName("windows-1252"));
        }
        if (text.indexOf('\0') >= 0) {
            throw Refusal.of("bank.no-text").at("file").thrown();
        }
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    /** One line of printable words, blanks together, at most so many letters; half a letter is none. */
    static String words(String text, int most) {
        String line = text.replaceAll(NO_LETTERS, " ").strip();
        return line.length() <= most
                ? line
                : line.substring(0, most).replaceAll(NO_LETTERS, " ").strip();
    }
}
