package changeover.billing.documents;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
import org.openpdf.text.Document;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PRStream;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfLiteral;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfWriter;

/**
 * A face cut to a set of letters: OpenPDF cuts and packs it once, afterwards a document only takes the bytes.
 *
 * @param packed the font program, deflated
 * @param length its length unpacked
 * @param name the PostScript name with the six letters that mark a cut
 * @param widths the widths of the codes 32 to 255, as it stands in the file
 */
record FontCut(Typeface face, byte[] packed, int length, String name, String widths) {

    static FontCut of(Typeface face, BitSet codes) {
        byte[] program = program(face, codes);
        StringBuilder widths = new StringBuilder("[");
        for (int code = 0x20; code < 0x100; code++) {
            widths.append(codes.get(code) ? face.width(WindowsCode.letter(code)) : 0)
                    .append(' ');
        }
        return new FontCut(
                face,
                Packed.bytes(program),
                program.length,
                mark(codes) + face.fontName(),
                widths.append(']').toString());
    }

    /** Writes the font and what belongs to it, and says where. */
    PdfIndirectReference writeTo(PdfWriter writer) throws IOException {
        PdfStream file = new PdfStream(packed);
        file.put(PdfName.FILTER, PdfName.FLATEDECODE);
        file.put(new PdfName("Length1"), new PdfNumber(length));
        BaseFont font = face.font();
        PdfDictionary descriptor = new PdfDictionary(PdfName.FONTDESCRIPTOR);
        descriptor.put(PdfName.FONTNAME, new PdfName(name));
        descriptor.put(PdfName.FLAGS, new PdfNumber(face == Typeface.HEADING ? 34 : 32));
        descriptor.put(PdfName.FONTBBOX, new PdfLiteral("[" + box(font) + "]"));
        descriptor.put(PdfName.ITALICANGLE, new PdfNumber(0));
        descriptor.put(PdfName.ASCENT, new PdfNumber(measure(font, BaseFont.ASCENT)));
        descriptor.put(PdfName.DESCENT, new PdfNumber(measure(font, BaseFont.DESCENT)));
        descriptor.put(PdfName.CAPHEIGHT, new PdfNumber(measure(font, BaseFont.CAPHEIGHT)));
        descriptor.put(PdfName.STEMV, new PdfNumber(face == Typeface.REGULAR ? 80 : 120));
        descriptor.put(PdfName.FONTFILE2, writer.addToBody(file).getIndirectReference());
        PdfDictionary dictionary = new PdfDictionary(PdfName.FONT);
        dictionary.put(PdfName.SUBTYPE, PdfName.TRUETYPE);
        dictionary.put(PdfName.BASEFONT, new PdfName(name));
        dictionary.put(PdfName.ENCODING, PdfName.WIN_ANSI_ENCODING);
        dictionary.put(PdfName.FIRSTCHAR, new PdfNumber(0x20));
        dictionary.put(PdfName.LASTCHAR, new PdfNumber(0xff));
        dictionary.put(PdfName.WIDTHS, new PdfLiteral(widths));
        dictionary.put(PdfName.FONTDESCRIPTOR, writer.addToBody(descriptor).getIndirectReference());
        return writer.addToBody(dictionary).getIndirectReference();
    }

    private static byte[] program(Typeface face, BitSet codes) {
        StringBuilder letters = new StringBuilder();
        codes.stream().forEach(code -> letters.append(WindowsCode.letter(code)));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document();
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        document.open();
        PdfContentByte content = writer.getDirectContent();
        content.beginText();
        content.setFontAndSize(face.font(), 10);
        content.showText(letters.toString());
        content.endText();
        document.close();
        try (PdfReader reader = new PdfReader(bytes.toByteArray())) {
            PdfDictionary fonts =
                    reader.getPageN(1).getAsDict(PdfName.RESOURCES).getAsDict(PdfName.FONT);
            PdfDictionary font = fonts.getAsDict(fonts.getKeys().iterator().next());
            PRStream file = (PRStream) font.getAsDict(PdfName.FONTDESCRIPTOR).getAsStream(PdfName.FONTFILE2);
            return PdfReader.getStreamBytes(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String mark(BitSet codes) {
        StringBuilder mark = new StringBuilder();
        int hash = codes.hashCode() & Integer.MAX_VALUE;
        for (int at = 0; at < 6; at++) {
            mark.append((char) ('A' + hash % 26));
            hash /= 26;
        }
        return mark.append('+').toString();
    }

    private static String box(BaseFont font) {
        return measure(font, BaseFont.BBOXLLX) + " " + measure(font, BaseFont.BBOXLLY) + " "
                + measure(font, BaseFont.BBOXURX) + " " + measure(font, BaseFont.BBOXURY);
    }

    private static int measure(BaseFont font, int which) {
        return Math.round(font.getFontDescriptor(which, 1000));
    }
}
