package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PaperStartTest {

    private static byte[] paper(String title, String words) {
        PaperFile file = PaperFile.letter();
        Canvas page = file.newPage();
        page.text(Typeface.REGULAR, 10, Ink.BLACK, 40, 60, words);
        page.text(Typeface.BOLD, 10, Ink.BLACK, 40, 80, words);
        page.text(Typeface.HEADING, 18, Ink.BLACK, 40, 120, title);
        return file.bytes(Locale.FRENCH, title, "Aubépine");
    }

    /** Two papers with other words and another title share the colours and both typefaces of their lines. */
    @Test
    void papers_of_one_kind_begin_alike() {
        byte[] first = paper("Facture 1", "Filtre neuf à la maison");
        byte[] second = paper("Relevé", "Visite d’été, drain vidé");
        int length = PaperStart.length(first);
        assertEquals(length, PaperStart.length(second));
        assertTrue(length > first.length / 2, length + " of " + first.length);
        assertArrayEquals(Arrays.copyOf(first, length), Arrays.copyOf(second, length));
        assertTrue(new String(first, length - 8, 8, StandardCharsets.ISO_8859_1).endsWith("endobj\n"));
    }

    @Test
    void a_file_that_is_no_drawn_paper_is_kept_whole() {
        assertEquals(0, PaperStart.length(new byte[0]));
        assertEquals(0, PaperStart.length("%PDF-1.7\n%\u00e2\n".getBytes(StandardCharsets.ISO_8859_1)));
        assertEquals(0, PaperStart.length("1 0 obj\n<</Length 9>>stream\n".getBytes(StandardCharsets.ISO_8859_1)));
        assertEquals(0, start("/Length1 9/Length 999999999"));
        assertEquals(0, start("/Length1 9/Length 99999999999"));
        assertEquals(0, start("/Length1 9"));
    }

    /** Whatever bytes are broken, a start lies within the file. */
    @Test
    void a_broken_file_has_a_start_within_it() {
        byte[] whole = paper("Facture 1", "Filtre neuf");
        Random random = new Random(7);
        for (int round = 0; round < 2_000; round++) {
            byte[] broken = Arrays.copyOf(whole, random.nextInt(whole.length + 1));
            for (int spoiled = 0; spoiled < 3 && broken.length > 0; spoiled++) {
                broken[random.nextInt(Math.min(broken.length, 200))] = (byte) random.nextInt();
            }
            int length = PaperStart.length(broken);
            assertTrue(length >= 0 && length <= broken.length);
        }
    }

    private static int start(String head) {
        String file = "%PDF-1.7\n%x\n1 0 obj\n<<" + head + ">>stream\n" + "y".repeat(9_000) + "\nendstream\nendobj\n";
        return PaperStart.length(file.getBytes(StandardCharsets.ISO_8859_1));
    }
}
