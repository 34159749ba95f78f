package changeover.billing.notices;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** A name and an address as a mail header says them (RFC 5322, the name in UTF-8 by RFC 2047). */
final class MailName {

    /** An encoded word is at most 75 characters; 42 bytes give 56 letters and the frame 12. */
    private static final int BYTES_A_WORD = 42;

    private MailName() {}

    static String header(String name, String address) {
        String line = OneLine.of(name);
        if (line.isEmpty()) {
            return "<" + address + ">";
        }
        boolean plain = line.chars().allMatch(letter -> letter >= 0x20 && letter < 0x7f);
        String said = plain ? "\"" + line.replaceAll("[\"\\\\]", "'") + "\"" : encoded(line);
        return said + " <" + address + ">";
    }

    private static String encoded(String line) {
        StringBuilder words = new StringBuilder();
        StringBuilder word = new StringBuilder();
        for (int at = 0; at < line.length(); ) {
            int point = line.codePointAt(at);
            String letter = Character.toString(point);
            if (bytes(word.toString()).length + bytes(letter).length > BYTES_A_WORD) {
                add(words, word);
            }
            word.append(letter);
            at += Character.charCount(point);
        }
        add(words, word);
        return words.toString();
    }

    private static void add(StringBuilder words, StringBuilder word) {
        words.append(words.isEmpty() ? "" : "\r\n ")
                .append("=?UTF-8?B?")
                .append(Base64.getEncoder().encodeToString(bytes(word.toString())))
                .append("?=");
        word.setLength(0);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
