package changeover.billing.documents;

import java.nio.charset.Charset;

/** A letter's byte in the encoding of the papers' fonts, Windows-1252. */
final class WindowsCode {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private WindowsCode() {}

    static int of(char letter) {
        return String.valueOf(letter).getBytes(WINDOWS)[0] & 0xff;
    }

    static char letter(int code) {
        return new String(new byte[] {(byte) code}, WINDOWS).charAt(0);
    }
}
