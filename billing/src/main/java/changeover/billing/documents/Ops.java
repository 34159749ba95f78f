package changeover.billing.documents;

import java.util.Arrays;

/** The drawing orders of one page as they will stand in the file; numbers have two decimals, a hundredth of a point. */
final class Ops {

    private byte[] bytes = new byte[4096];
    private int length;

    Ops add(String ascii) {
        int more = ascii.length();
        room(more);
        ascii.getBytes(0, more, bytes, length);
        length += more;
        return this;
    }

    Ops add(float number) {
        room(16);
        long hundredths = Math.round(number * 100d);
        if (hundredths < 0) {
            bytes[length++] = '-';
            hundredths = -hundredths;
        }
        whole(hundredths / 100);
        int rest = (int) (hundredths % 100);
        if (rest != 0) {
            bytes[length++] = '.';
            bytes[length++] = (byte) ('0' + rest / 10);
            if (rest % 10 != 0) {
                bytes[length++] = (byte) ('0' + rest % 10);
            }
        }
        bytes[length++] = ' ';
        return this;
    }

    /** A string of text in brackets; brackets and backslashes are guarded. */
    Ops addText(String plain) {
        room(plain.length() * 2 + 2);
        bytes[length++] = '(';
        for (int at = 0; at < plain.length(); at++) {
            int code = Letters.code(plain.charAt(at));
            if (code == '(' || code == ')' || code == '\\') {
                bytes[length++] = '\\';
            }
            bytes[length++] = (byte) code;
        }
        bytes[length++] = ')';
        return this;
    }

    byte[] packed(int level) {
        return Packed.bytes(bytes, length, level);
    }

    int length() {
        return length;
    }

    private void whole(long number) {
        if (number >= 10) {
            whole(number / 10);
        }
        bytes[length++] = (byte) ('0' + number % 10);
    }

    private void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
        }
    }
}
